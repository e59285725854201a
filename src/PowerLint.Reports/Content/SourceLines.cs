using PowerLint.Program;
using PowerLint.Rules;

namespace PowerLint.Reports;

/// <summary>The text of source files as reports show it. A file that cannot be read has no lines: reports do without.</summary>
public sealed class SourceLines
{
    private const int LongestQuote = 100;
    private readonly SourceTexts _texts = new();

    /// <summary>A line, or null where the file has none of that number.</summary>
    /// <param name="file">The file.</param>
    /// <param name="line">The line, from 1.</param>
    public string? Line(SourceFile file, int line)
    {
        ArgumentNullException.ThrowIfNull(file);
        var lines = _texts.Lines(file.Path);
        return line >= 1 && line <= lines.Count ? lines[line - 1] : null;
    }

    /// <summary>What stands in a range, on one line and shortened, or null where it cannot be read.</summary>
    public string? Quote(SourceRange range)
    {
        var words = _texts.Text(range).Split([' ', '\t', '\n'], StringSplitOptions.RemoveEmptyEntries);
        var quote = string.Join(' ', words);
        return quote.Length switch
        {
            0 => null,
            <= LongestQuote => quote,
            _ => string.Concat(quote.AsSpan(0, LongestQuote), " …"),
        };
    }
}
