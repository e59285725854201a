using PowerLint.CommandLine;

namespace PowerLint.Tests;

/// <summary>Runs commands in process and keeps what they write.</summary>
internal sealed class TestConsole(string workingDirectory, bool isTerminal = false) : IConsole
{
    private readonly StringWriter _output = new() { NewLine = "\n" };
    private readonly StringWriter _error = new() { NewLine = "\n" };

    public TextWriter Output => _output;

    public TextWriter Error => _error;

    public bool IsOutputTerminal => isTerminal;

    public bool IsErrorTerminal => false;

    public string WorkingDirectory => workingDirectory;

    public string? CacheFolder { get; init; }

    public string OutputText => _output.ToString();

    public string ErrorText => _error.ToString();

    /// <summary>Runs one command line in a folder.</summary>
    public static CommandResult Run(string folder, params string[] arguments)
    {
        var console = new TestConsole(folder);
        var status = CommandTree.Run(arguments, console, TestContext.Current.CancellationToken);
        return new CommandResult(status, console.OutputText, console.ErrorText);
    }
}

/// <summary>What a command did.</summary>
/// <param name="Status">Its exit status.</param>
/// <param name="Output">What it wrote to standard output.</param>
/// <param name="Error">What it wrote to standard error.</param>
internal sealed record CommandResult(int Status, string Output, string Error);
