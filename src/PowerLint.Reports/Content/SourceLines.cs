using System.Text;
using PowerLint.Program;

namespace PowerLint.Reports;

/// <summary>The text of source files, read when first asked for. A file that cannot be read has no lines: reports do without.</summary>
public sealed class SourceLines
{
    private const int LongestQuote = 100;
    private readonly Dictionary<string, string[]> _files = new(StringComparer.Ordinal);

    /// <summary>A line, or null where the file has none of that number.</summary>
    /// <param name="file">The file.</param>
    /// <param name="line">The line, from 1.</param>
    public string? Line(SourceFile file, int line)
    {
        ArgumentNullException.ThrowIfNull(file);
        var lines = Lines(file.Path);
        return line >= 1 && line <= lines.Length ? lines[line - 1] : null;
    }

    /// <summary>What stands in a range, on one line and shortened, or null where it cannot be read.</summary>
    public string? Quote(SourceRange range)
    {
        var lines = Lines(range.File.Path);
        if (range.Line < 1 || range.Line > lines.Length)
        {
            return null;
        }

        var text = new StringBuilder();
        var last = Math.Min(Math.Max(range.End.Line, range.Line), lines.Length);
        for (var number = range.Line; number <= last && text.Length <= LongestQuote * 4; number++)
        {
            var line = lines[number - 1];
            var from = number == range.Line ? Math.Clamp(range.Start.Column - 1, 0, line.Length) : 0;
            var to = number == range.End.Line ? Math.Clamp(range.End.Column - 1, from, line.Length) : line.Length;
            text.Append(line, from, to - from).Append(' ');
        }

        var words = text.ToString().Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
        var quote = string.Join(' ', words);
        if (quote.Length == 0)
        {
            return null;
        }

        return quote.Length <= LongestQuote ? quote : string.Concat(quote.AsSpan(0, LongestQuote), " …");
    }

    private string[] Lines(string path)
    {
        if (!_files.TryGetValue(path, out var lines))
        {
            lines = Read(path);
            _files.Add(path, lines);
        }

        return lines;
    }

    private static string[] Read(string path)
    {
        try
        {
            return File.Exists(path) ? File.ReadAllLines(path) : [];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
