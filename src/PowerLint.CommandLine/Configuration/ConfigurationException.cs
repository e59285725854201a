namespace PowerLint.CommandLine;

/// <summary>Something wrong in a configuration file.</summary>
/// <param name="File">The file.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Message">What is wrong and what to do.</param>
internal sealed record ConfigurationError(string File, int Line, string Message)
{
    /// <inheritdoc/>
    public override string ToString() => $"{File}:{Line}: {Message}";
}

/// <summary>A configuration file cannot be used.</summary>
/// <param name="errors">All that is wrong in it.</param>
internal sealed class ConfigurationException(IReadOnlyList<ConfigurationError> errors)
    : Exception(string.Join('\n', errors))
{
    /// <summary>All that is wrong in it, by line.</summary>
    internal IReadOnlyList<ConfigurationError> Errors { get; } = errors;
}
