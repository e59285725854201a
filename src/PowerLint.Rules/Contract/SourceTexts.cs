using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>The firmware's source files, read once; a file that cannot be read counts as empty.</summary>
public sealed class SourceTexts
{
    private readonly Dictionary<string, string[]> _lines = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _lineEnds = new(StringComparer.Ordinal);

    /// <summary>The lines of a file, without line ends.</summary>
    public IReadOnlyList<string> Lines(string path)
    {
        if (!_lines.TryGetValue(path, out var lines))
        {
            var text = Read(path);
            lines = Split(text);
            _lines[path] = lines;
            _texts[path] = text;
            var end = text.IndexOf('\n', StringComparison.Ordinal);
            _lineEnds[path] = end > 0 && text[end - 1] == '\r' ? "\r\n" : "\n";
        }

        return lines;
    }

    /// <summary>A line, from 1; empty outside the file.</summary>
    public string Line(string path, int number)
    {
        var lines = Lines(path);
        return number >= 1 && number <= lines.Count ? lines[number - 1] : "";
    }

    /// <summary>The whole text of a file.</summary>
    public string Whole(string path)
    {
        Lines(path);
        return _texts[path];
    }

    /// <summary>What ends the file's lines: that of its first one.</summary>
    public string LineEnd(string path)
    {
        Lines(path);
        return _lineEnds[path];
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

    private static string[] Split(string text)
    {
        var lines = new List<string>();
        using var reader = new StringReader(text);
        while (reader.ReadLine() is { } line)
        {
            lines.Add(line);
        }

        return [.. lines];
    }

    private static string Read(string path)
    {
        try
        {
            return File.Exists(path) ? File.ReadAllText(path) : "";
        }
        catch (IOException)
        {
            return "";
        }
        catch (UnauthorizedAccessException)
        {
            return "";
        }
    }
}
