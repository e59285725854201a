#pragma warning disable RS0030 // The one place that may use the real console.
using System.Text;

namespace PowerLint.CommandLine;

/// <summary>The process's own console.</summary>
internal sealed class SystemConsole : IConsole
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Opens it; text goes out as UTF-8 whatever the locale, so that files and pipes always read the same.</summary>
    internal SystemConsole()
    {
        Output = new StreamWriter(Console.OpenStandardOutput(), Utf8, 16384) { AutoFlush = false };
        Error = new StreamWriter(Console.OpenStandardError(), Utf8) { AutoFlush = true };
    }

    /// <inheritdoc/>
    public TextWriter Output { get; }

    /// <inheritdoc/>
    public TextWriter Error { get; }

    /// <inheritdoc/>
    public bool IsOutputTerminal =>
        !Console.IsOutputRedirected
        && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
        && !string.Equals(Environment.GetEnvironmentVariable("TERM"), "dumb", StringComparison.Ordinal);

    /// <inheritdoc/>
    public bool IsErrorTerminal =>
        !Console.IsErrorRedirected
        && !string.Equals(Environment.GetEnvironmentVariable("TERM"), "dumb", StringComparison.Ordinal)
        && Environment.GetEnvironmentVariable("CI") is not { Length: > 0 };

    /// <inheritdoc/>
    public string WorkingDirectory => Environment.CurrentDirectory;

    /// <inheritdoc/>
    public string? CacheFolder => Frontend.CacheFolder.Path;
}
