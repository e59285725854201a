using PowerLint.CommandLine;

namespace PowerLint.Fuzz;

/// <summary>A console that nobody reads.</summary>
internal sealed class QuietConsole(string folder) : IConsole
{
    private readonly StringWriter _error = new();

    public TextWriter Output { get; } = TextWriter.Null;

    public TextWriter Error => _error;

    public string ErrorText => _error.ToString();

    public bool IsOutputTerminal => false;

    public bool IsErrorTerminal => false;

    public string WorkingDirectory => folder;

    public string? CacheFolder => null;
}
