using System.Collections.Immutable;

namespace PowerLint.Rules;

/// <summary>What the suppressions did.</summary>
/// <param name="Comments">The suppressions, in source order.</param>
/// <param name="Kept">Findings that none covers.</param>
/// <param name="Suppressed">Findings that one covers.</param>
internal sealed record SuppressionOutcome(
    ImmutableArray<SuppressionComment> Comments,
    ImmutableArray<Finding> Kept,
    ImmutableArray<SuppressedFinding> Suppressed
)
{
    /// <summary>Applies suppressions. One without a reason covers nothing.</summary>
    public static SuppressionOutcome Apply(ImmutableArray<SuppressionComment> comments, IEnumerable<Finding> findings)
    {
        var kept = ImmutableArray.CreateBuilder<Finding>();
        var suppressed = ImmutableArray.CreateBuilder<SuppressedFinding>();
        foreach (var finding in findings)
        {
            if (comments.FirstOrDefault(comment => comment.Covers(finding)) is { Reason: { } reason } comment)
            {
                suppressed.Add(new SuppressedFinding(finding, reason, comment.Comment.Range));
            }
            else
            {
                kept.Add(finding);
            }
        }

        return new SuppressionOutcome(comments, kept.ToImmutable(), suppressed.ToImmutable());
    }

    /// <summary>Rules that a comment names but that it covered no finding of.</summary>
    public IEnumerable<string> UnusedRuleIds(SuppressionComment comment) =>
        comment.RuleIds.Where(id =>
            !Suppressed.Any(entry =>
                entry.Comment == comment.Comment.Range
                && string.Equals(entry.Finding.RuleId, id, StringComparison.Ordinal)
            )
        );
}
