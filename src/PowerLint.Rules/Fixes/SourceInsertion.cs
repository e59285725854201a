using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>Puts statements before and after others, in the file's indentation and with its line ends.</summary>
internal sealed class SourceInsertion(SourceTexts sources)
{
    /// <summary>Statements before one; null where the source leaves no room for them.</summary>
    public SourceEdit? Before(Statement statement, IReadOnlyList<string> lines)
    {
        while (statement is CaseLabel or Label)
        {
            statement = statement is CaseLabel label ? label.Labelled : ((Label)statement).Labelled;
        }

        var start = statement.Range.Start;
        var text = sources.Line(start.File.Path, start.Line);
        var before = text[..Math.Min(start.Column - 1, text.Length)];
        if (text.EndsWith('\\') || EndsInBackslash(start.File.Path, start.Line - 1))
        {
            return null;
        }

        return before.Trim().Length == 0
            ? Insertion(
                AtLine(start, AboveItsComments(start.File.Path, start.Line)),
                Lines(start.File.Path, before, lines)
            )
            : Insertion(start, string.Join(' ', lines) + " ");
    }

    /// <summary>Statements after one; null where the source leaves no room for them.</summary>
    public SourceEdit? After(Statement statement, IReadOnlyList<string> lines)
    {
        if (WholeOf(statement) is not { } whole)
        {
            return null;
        }

        var (start, end) = (whole.Start, whole.End);
        var path = start.File.Path;
        var text = sources.Line(path, end.Line);
        if (text.EndsWith('\\'))
        {
            return null;
        }

        var behind = text[Math.Min(end.Column - 1, text.Length)..].Trim();
        var isAlone =
            behind.Length == 0
            || behind.StartsWith("//", StringComparison.Ordinal)
            || (
                behind.StartsWith("/*", StringComparison.Ordinal)
                && behind.IndexOf("*/", StringComparison.Ordinal) == behind.Length - 2
            );
        if (!isAlone)
        {
            return Insertion(end, " " + string.Join(' ', lines));
        }

        // A statement is followed at least by the brace that closes its block, on this line or on another one.
        var first = sources.Line(path, start.Line);
        var indentation = first[..(first.Length - first.TrimStart().Length)];
        return Insertion(AtLine(end, end.Line + 1), Lines(path, indentation, lines));
    }

    /// <summary>Takes a statement out, with its line where nothing else stands there; null where its end is not seen.</summary>
    public SourceEdit? Without(Statement statement)
    {
        if (WholeOf(statement) is not { } whole || whole.Start.Line != whole.End.Line)
        {
            return null;
        }

        var line = sources.Line(whole.Start.File.Path, whole.Start.Line);
        var before = line[..Math.Min(whole.Start.Column - 1, line.Length)];
        var behind = line[Math.Min(whole.End.Column - 1, line.Length)..];
        return before.Trim().Length == 0 && behind.Trim().Length == 0
            ? new SourceEdit(
                new SourceRange(AtLine(whole.Start, whole.Start.Line), AtLine(whole.Start, whole.Start.Line + 1)),
                ""
            )
            : null;
    }

    /// <summary>A statement with its semicolon, or null where its end is not seen.</summary>
    private SourceRange? WholeOf(Statement statement)
    {
        var range = statement.Range;
        var path = range.File.Path;
        if (sources.Text(range) is not { Length: > 0 } text)
        {
            return null;
        }

        for (
            var (number, column) = (range.End.Line, range.End.Column - 1);
            number <= range.End.Line + 1;
            number++, column = 0
        )
        {
            var line = sources.Line(path, number);
            while (column < line.Length && char.IsWhiteSpace(line[column]))
            {
                column++;
            }

            if (column < line.Length)
            {
                return line[column] == ';' ? range with { End = new SourcePosition(range.File, number, column + 2) }
                    : text[^1] is ';' or '}' ? range
                    : null;
            }
        }

        return text[^1] is ';' or '}' ? range : null;
    }

    // A comment alone on its lines belongs to the statement below it; a suppression must stay with its statement.
    private int AboveItsComments(string path, int line)
    {
        while (true)
        {
            var above = sources.Line(path, line - 1).Trim();
            if (above.StartsWith("//", StringComparison.Ordinal))
            {
                line--;
                continue;
            }

            if (!above.EndsWith("*/", StringComparison.Ordinal))
            {
                return line;
            }

            var first = line - 1;
            while (first > 1 && !sources.Line(path, first).Contains("/*", StringComparison.Ordinal))
            {
                first--;
            }

            if (!sources.Line(path, first).TrimStart().StartsWith("/*", StringComparison.Ordinal))
            {
                return line;
            }

            line = first;
        }
    }

    private bool EndsInBackslash(string path, int line) => sources.Line(path, line).EndsWith('\\');

    private string Lines(string path, string indentation, IReadOnlyList<string> lines) =>
        string.Concat(lines.Select(line => indentation + line + sources.LineEnd(path)));

    private static SourcePosition AtLine(SourcePosition position, int line) =>
        position with
        {
            Line = line,
            Column = 1,
        };

    private static SourceEdit Insertion(SourcePosition position, string text) =>
        new(new SourceRange(position, position), text);
}
