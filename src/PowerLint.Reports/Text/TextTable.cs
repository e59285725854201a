using Spectre.Console;

namespace PowerLint.Reports;

/// <summary>Rows of text in columns as wide as they need to be; no frame, no padding at line ends.</summary>
internal sealed class TextTable(int indent, params string[] headings)
{
    private readonly List<string[]> _rows = [];

    /// <summary>Adds a row.</summary>
    internal void Add(params string[] cells) => _rows.Add(cells);

    /// <summary>Prints the rows under their headings; nothing where there are no rows.</summary>
    internal void Print(IAnsiConsole console)
    {
        if (_rows.Count == 0)
        {
            return;
        }

        var widths = new int[headings.Length];
        foreach (var row in _rows.Prepend(headings))
        {
            for (var column = 0; column < row.Length; column++)
            {
                widths[column] = Math.Max(widths[column], row[column].Length);
            }
        }

        console.PrintLine(Line(headings, widths), Styles.Faint);
        foreach (var row in _rows)
        {
            console.PrintLine(Line(row, widths));
        }
    }

    private string Line(string[] cells, int[] widths)
    {
        var padded = cells.Select((cell, column) => cell.PadRight(widths[column]));
        return (new string(' ', indent) + string.Join("  ", padded)).TrimEnd();
    }
}
