using System.Collections.Immutable;
using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>
/// A comment that asks for something: <c>// powerlint: allow floating-pin, polling-wait (the sensor drives it)</c>. Behind code
/// it speaks of its own line; alone on a line, of the next line that holds code or another kind of comment.
/// </summary>
/// <param name="Comment">The comment.</param>
/// <param name="RuleIds">The rules that it allows to fire; empty where it was not understood.</param>
/// <param name="Reason">Why; null where none is given.</param>
/// <param name="Lines">The lines that it speaks of.</param>
internal sealed record SuppressionComment(
    Comment Comment,
    ImmutableArray<string> RuleIds,
    string? Reason,
    ImmutableArray<int> Lines
)
{
    private const string Product = "powerlint:";
    private const string Verb = "allow";

    /// <summary>Reads the comments that address the product, in source order, each once.</summary>
    public static ImmutableArray<SuppressionComment> Read(
        IEnumerable<Comment> comments,
        SourceTexts sources,
        PathOrder paths
    ) =>
        [
            .. comments
                .Where(comment => comment.Text.StartsWith(Product, StringComparison.OrdinalIgnoreCase))
                .DistinctBy(comment => (comment.Range.File.Path, comment.Range.Start.Line, comment.Range.Start.Column))
                .OrderBy(comment => comment.Range.File.Path, paths)
                .ThenBy(comment => comment.Range.Start.Line)
                .ThenBy(comment => comment.Range.Start.Column)
                .Select(comment => Parse(comment, sources)),
        ];

    /// <summary>Whether it allows a finding.</summary>
    public bool Covers(Finding finding) =>
        RuleIds.Contains(finding.RuleId, StringComparer.Ordinal)
        && string.Equals(finding.Range.File.Path, Comment.Range.File.Path, StringComparison.Ordinal)
        && Lines.Contains(finding.Range.Line);

    private static SuppressionComment Parse(Comment comment, SourceTexts sources)
    {
        var lines = LinesOf(comment.Range, sources);
        var text = comment.Text[Product.Length..].Trim();
        if (!text.StartsWith(Verb, StringComparison.Ordinal) || text.Length == Verb.Length)
        {
            return new SuppressionComment(comment, [], null, lines);
        }

        text = text[Verb.Length..].Trim();
        var open = text.IndexOf('(', StringComparison.Ordinal);
        var close = text.LastIndexOf(')');
        var names = open < 0 ? text : text[..open];
        var reason = open >= 0 && close > open ? text[(open + 1)..close].Trim() : "";
        return new SuppressionComment(
            comment,
            [.. names.Split([',', ' ', '\t'], StringSplitOptions.RemoveEmptyEntries)],
            reason.Length == 0 ? null : reason,
            lines
        );
    }

    private static ImmutableArray<int> LinesOf(SourceRange range, SourceTexts sources)
    {
        var path = range.File.Path;
        var before = sources.Line(path, range.Start.Line);
        if (before.AsSpan(0, Math.Min(Math.Max(range.Start.Column - 1, 0), before.Length)).Trim().Length > 0)
        {
            return [range.Start.Line];
        }

        // Alone on its line. Several such comments may stand above one statement.
        var next = range.End.Column == 1 && range.End.Line > range.Start.Line ? range.End.Line : range.End.Line + 1;
        var after = next;
        while (IsSuppressionAlone(sources.Line(path, after)))
        {
            after++;
        }

        return [.. new[] { range.Start.Line, next, after }.Distinct()];
    }

    private static bool IsSuppressionAlone(string line)
    {
        var text = line.AsSpan().Trim();
        return (text.StartsWith("//", StringComparison.Ordinal) || text.StartsWith("/*", StringComparison.Ordinal))
            && text[2..].TrimStart().StartsWith(Product, StringComparison.OrdinalIgnoreCase);
    }
}
