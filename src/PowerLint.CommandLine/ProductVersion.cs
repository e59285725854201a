using System.Reflection;

namespace PowerLint.CommandLine;

/// <summary>The product's version.</summary>
internal static class ProductVersion
{
    /// <summary>As released, without the build's commit.</summary>
    internal static string Text { get; } = Read();

    private static string Read()
    {
        var full =
            typeof(ProductVersion)
                .Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()
                ?.InformationalVersion
            ?? "0.0.0";
        var plus = full.IndexOf('+', StringComparison.Ordinal);
        return plus < 0 ? full : full[..plus];
    }
}
