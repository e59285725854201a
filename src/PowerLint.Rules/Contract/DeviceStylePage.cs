using System.Text;

namespace PowerLint.Rules;

/// <summary>
/// A rule's page with the examples of one device style only. Under its two headings of examples a page has a third-level heading
/// for each style; what follows the last example says which styles have nothing of the kind.
/// </summary>
public static class DeviceStylePage
{
    /// <summary>The headings under which examples stand.</summary>
    private static readonly string[] ExampleHeadings = ["## Example", "## Mended"];

    /// <summary>The page for a style. Examples without a style's heading are for all of them.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="style">The style, as a device model names it; empty for none: then no style's example is kept.</param>
    public static string Of(RuleDescriptor rule, string style)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(style);
        var page = new StringBuilder();
        var section = new List<string>();
        foreach (var (line, isCode) in Lines(rule.Page))
        {
            if (!isCode && line.StartsWith("## ", StringComparison.Ordinal))
            {
                Append(page, section, style);
                section.Clear();
            }

            section.Add(line);
        }

        Append(page, section, style);
        return page.ToString().TrimEnd() + "\n";
    }

    /// <summary>The lines of a Markdown text, and whether each is code; a fence is code.</summary>
    private static IEnumerable<(string Line, bool IsCode)> Lines(string text)
    {
        var isCode = false;
        foreach (var line in text.TrimEnd().Split('\n'))
        {
            var isFence = line.StartsWith("```", StringComparison.Ordinal);
            yield return (line, isCode || isFence);
            isCode ^= isFence;
        }
    }

    private static void Append(StringBuilder page, List<string> section, string style)
    {
        IReadOnlyList<string> kept = ExampleHeadings.Contains(section[0], StringComparer.Ordinal)
            ? OfStyle(section, style)
            : section;
        foreach (var line in kept)
        {
            page.Append(line).Append('\n');
        }
    }

    private static List<string> OfStyle(List<string> section, string style)
    {
        var lines = Lines(string.Join('\n', section)).ToArray();
        var starts = Enumerable.Range(0, lines.Length).Where(at => IsStyleHeading(lines[at])).ToArray();
        if (starts.Length == 0)
        {
            return section;
        }

        var end = Array.FindLastIndex(lines, line => line.IsCode) + 1;
        var from = Array.FindIndex(lines, line => IsStyleHeading(line) && line.Line[4..] == style);
        List<string> kept =
            from < 0 ? Trimmed(lines[end..]) : Trimmed(lines[from..starts.FirstOrDefault(start => start > from, end)]);
        var before = Trimmed(lines[1..starts[0]]);
        return kept.Count + before.Count == 0 ? [] : [section[0], "", .. before, .. kept];
    }

    private static bool IsStyleHeading((string Line, bool IsCode) line) =>
        !line.IsCode && line.Line.StartsWith("### ", StringComparison.Ordinal);

    /// <summary>The lines from the first that is not empty to the last, and an empty one; or nothing.</summary>
    private static List<string> Trimmed(ReadOnlySpan<(string Line, bool IsCode)> lines)
    {
        var kept = new List<string>();
        foreach (var (line, _) in lines)
        {
            if (line.Length > 0 || kept.Count > 0)
            {
                kept.Add(line);
            }
        }

        while (kept.Count > 0 && kept[^1].Length == 0)
        {
            kept.RemoveAt(kept.Count - 1);
        }

        if (kept.Count > 0)
        {
            kept.Add("");
        }

        return kept;
    }
}
