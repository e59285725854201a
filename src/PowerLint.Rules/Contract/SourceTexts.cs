using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>The firmware's source files, read once; a file that cannot be read counts as empty.</summary>
public sealed class SourceTexts
{
    private readonly Dictionary<string, string[]> _lines = new(StringComparer.Ordinal);

    /// <summary>The lines of a file, without line ends.</summary>
    public IReadOnlyList<string> Lines(string path)
    {
        if (!_lines.TryGetValue(path, out var lines))
        {
            lines = Read(path);
            _lines[path] = lines;
        }

        return lines;
    }

    /// <summary>A line, from 1; empty outside the file.</summary>
    public string Line(string path, int number)
    {
        var lines = Lines(path);
        return number >= 1 && number <= lines.Count ? lines[number - 1] : "";
    }

    /// <summary>The text of a range, lines joined with line feeds.</summary>
    public string Text(SourceRange range)
    {
        var path = range.File.Path;
        if (range.Line < 1 || !string.Equals(range.End.File.Path, path, StringComparison.Ordinal))
        {
            return "";
        }

        var parts = new List<string>();
        for (var number = range.Start.Line; number <= range.End.Line; number++)
        {
            var line = Line(path, number);
            var from = number == range.Start.Line ? Math.Min(range.Start.Column - 1, line.Length) : 0;
            var to = number == range.End.Line ? Math.Min(range.End.Column - 1, line.Length) : line.Length;
            parts.Add(from < to ? line[from..to] : "");
        }

        return string.Join('\n', parts);
    }

    private static string[] Read(string path)
    {
        try
        {
            return File.Exists(path) ? File.ReadAllLines(path) : [];
        }
        catch (IOException)
        {
            return [];
        }
        catch (UnauthorizedAccessException)
        {
            return [];
        }
    }
}
