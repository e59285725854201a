using Spectre.Console;

namespace PowerLint.Reports;

/// <summary>Text with styles, to a terminal in colour or to anything else without.</summary>
public static class TextConsole
{
    /// <summary>Makes a console over a writer.</summary>
    /// <param name="writer">Where the text goes.</param>
    /// <param name="isTerminal">Whether colours are understood there.</param>
    public static IAnsiConsole Over(TextWriter writer, bool isTerminal)
    {
        var console = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Ansi = isTerminal ? AnsiSupport.Yes : AnsiSupport.No,
                ColorSystem = isTerminal ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
                Interactive = InteractionSupport.No,
                Out = new AnsiConsoleOutput(writer),
            }
        );

        // Lines are never broken here: the terminal wraps them, and what reads a pipe wants them whole.
        console.Profile.Width = int.MaxValue / 4;
        return console;
    }

    /// <summary>Writes text as it is, brackets and all.</summary>
    internal static void Print(this IAnsiConsole console, string text, Style? style = null)
    {
        if (text.Length > 0)
        {
            console.Write(new Text(text, style));
        }
    }

    /// <summary>Writes text as it is and ends the line.</summary>
    internal static void PrintLine(this IAnsiConsole console, string text = "", Style? style = null)
    {
        console.Print(text, style);
        console.WriteLine();
    }
}
