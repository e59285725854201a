using System.Collections.Immutable;
using System.Text;

namespace PowerLint.CommandLine;

/// <summary>What every command of one run shares.</summary>
/// <param name="Console">The terminal.</param>
/// <param name="CompilerFlags">What followed <c>--</c> on the command line.</param>
/// <param name="Cancellation">Stops a long run.</param>
internal sealed record CommandSession(
    IConsole Console,
    ImmutableArray<string> CompilerFlags,
    CancellationToken Cancellation
)
{
    /// <summary>The whole command line.</summary>
    internal ImmutableArray<string> Arguments { get; init; } = [];

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>A path as the user gave it, made absolute.</summary>
    internal string FullPath(string path) => Path.GetFullPath(path, Console.WorkingDirectory);

    /// <summary>Writes a report to the file that was asked for, or to standard output.</summary>
    /// <param name="path">The file, or null for standard output.</param>
    /// <param name="write">Writes it; told whether a terminal that understands colour reads it.</param>
    internal void WriteReport(string? path, Action<TextWriter, bool> write)
    {
        if (path is null)
        {
            write(Console.Output, Console.IsOutputTerminal);
            Console.Output.Flush();
            return;
        }

        // Written whole or not at all: a report that breaks off would read as a clean one.
        using var text = new StringWriter { NewLine = "\n" };
        write(text, false);
        try
        {
            File.WriteAllText(FullPath(path), text.ToString(), Utf8);
        }
        catch (Exception exception)
            when (exception is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw new UsageException(
                $"{path}: the report cannot be written: {exception.Message} Check the folder and its permissions, or choose another --output."
            );
        }
    }
}
