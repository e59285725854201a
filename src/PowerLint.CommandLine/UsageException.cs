using PowerLint.Devices;

namespace PowerLint.CommandLine;

/// <summary>The command line, the configuration or the input cannot be used as given.</summary>
/// <param name="message">What is wrong, where, and what to do.</param>
internal sealed class UsageException(string message) : Exception(message)
{
    /// <summary>A name that stands for nothing.</summary>
    /// <param name="kind">What it should name: <c>rule</c>.</param>
    /// <param name="name">The name as given.</param>
    /// <param name="known">The names that there are.</param>
    /// <param name="advice">Where to find them all.</param>
    internal static UsageException Unknown(string kind, string name, IEnumerable<string> known, string advice)
    {
        var hint = NearestNames.Hint(name, known);
        return new UsageException($"there is no {kind} '{name}'{(hint.Length > 0 ? hint : ".")} {advice}");
    }
}
