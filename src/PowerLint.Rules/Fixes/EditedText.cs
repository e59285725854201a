using System.Text;

namespace PowerLint.Rules;

/// <summary>Applies edits to the text of one file.</summary>
public static class EditedText
{
    /// <summary>The text after the edits; insertions at one place stay in the order given.</summary>
    /// <param name="text">The text, without a byte-order mark.</param>
    /// <param name="edits">Edits that do not overlap.</param>
    /// <returns>The new text, or null where an edit lies outside the text or two overlap.</returns>
    public static string? Apply(string text, IEnumerable<SourceEdit> edits)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(edits);
        var starts = LineStarts(text);
        var result = new StringBuilder();
        var done = 0;
        foreach (var edit in edits.OrderBy(e => e.Range.Start.Line).ThenBy(e => e.Range.Start.Column))
        {
            if (
                Offset(starts, text, edit.Range.Start.Line, edit.Range.Start.Column) is not { } start
                || Offset(starts, text, edit.Range.End.Line, edit.Range.End.Column) is not { } end
                || start < done
                || end < start
            )
            {
                return null;
            }

            result.Append(text, done, start - done).Append(edit.Text);
            done = end;
        }

        return result.Append(text, done, text.Length - done).ToString();
    }

    private static int? Offset(List<int> starts, string text, int line, int column)
    {
        // The line behind the last one begins where the text ends.
        if (line < 1 || column < 1 || line > starts.Count + 1 || (line == starts.Count + 1 && column > 1))
        {
            return null;
        }

        var offset = line > starts.Count ? text.Length : starts[line - 1] + column - 1;
        return offset <= text.Length ? offset : null;
    }

    private static List<int> LineStarts(string text)
    {
        var starts = new List<int> { 0 };
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n')))
            {
                starts.Add(i + 1);
            }
        }

        return starts;
    }
}
