using System.CommandLine;

namespace PowerLint.CommandLine;

/// <summary>The commands, and how their errors reach the user.</summary>
internal static class CommandTree
{
    private const string FlagsMark = "--";

    /// <summary>Runs one command line and returns the exit status.</summary>
    /// <param name="arguments">The arguments; what follows <c>--</c> are compiler flags.</param>
    /// <param name="console">Where it reads and writes.</param>
    /// <param name="cancellation">Stops a long run.</param>
    internal static int Run(string[] arguments, IConsole console, CancellationToken cancellation = default)
    {
        var mark = Array.IndexOf(arguments, FlagsMark);
        var own = mark < 0 ? arguments : arguments[..mark];
        var session = new CommandSession(console, mark < 0 ? [] : [.. arguments[(mark + 1)..]], cancellation)
        {
            Arguments = [.. arguments],
        };
        try
        {
            return Invoke(Build(session), own, console);
        }
        catch (Exception exception) when (exception is UsageException or ConfigurationException)
        {
            console.Output.Flush();
            foreach (var line in exception.Message.Split('\n'))
            {
                console.Error.WriteLine($"powerlint: {line.TrimEnd('\r')}");
            }

            return ExitStatus.UsageError;
        }
        catch (OperationCanceledException)
        {
            console.Error.WriteLine("powerlint: stopped before the analysis was done");
            return ExitStatus.Incomplete;
        }
#pragma warning disable CA1031 // A defect of the product must not pass for a clean firmware, nor end without a word.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            console.Error.WriteLine(
                "powerlint: this is a defect of PowerLint, please report it with the firmware, or a piece of it:"
            );
            console.Error.WriteLine(exception);
            return ExitStatus.Incomplete;
        }
        finally
        {
            console.Output.Flush();
        }
    }

    private static int Invoke(RootCommand root, string[] arguments, IConsole console)
    {
        if (arguments is [{ Length: > 0 } first, ..] && first[0] != '-')
        {
            var commands = root.Subcommands.Select(command => command.Name).ToArray();
            if (!commands.Contains(first, StringComparer.Ordinal))
            {
                throw UsageException.Unknown(
                    "command",
                    first,
                    commands,
                    $"The commands are {string.Join(", ", commands)}."
                );
            }
        }

        var parsed = root.Parse(arguments);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
            {
                console.Error.WriteLine($"powerlint: {error.Message}");
            }

            console.Error.WriteLine(
                "powerlint: run 'powerlint --help', or a command with --help, for what can be given"
            );
            return ExitStatus.UsageError;
        }

        return parsed.Invoke(
            new InvocationConfiguration
            {
                Output = console.Output,
                Error = console.Error,
                EnableDefaultExceptionHandler = false,
            }
        );
    }

    private static RootCommand Build(CommandSession session) =>
        new(
            "Finds the mistakes in embedded C firmware that keep a microcontroller's supply current above its "
                + "datasheet's floor."
        )
        {
            CheckCommand.Build(session),
            StateCommand.Build(session),
            RulesCommand.Build(session),
            ExplainCommand.Build(session),
            DevicesCommand.Build(session),
            InitCommand.Build(session),
        };
}
