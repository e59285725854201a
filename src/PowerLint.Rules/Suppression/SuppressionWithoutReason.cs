namespace PowerLint.Rules;

/// <summary>A suppression that does not say why.</summary>
internal sealed class SuppressionWithoutReason : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var comment in context.Suppressions?.Comments ?? [])
        {
            if (comment is { Reason: null, RuleIds.IsEmpty: false })
            {
                var rules = string.Join(", ", comment.RuleIds);
                context.Report(
                    new Finding
                    {
                        RuleId = context.Rule.Id,
                        Level = context.LevelOf(Certainty.Proven),
                        Certainty = Certainty.Proven,
                        Subjects = comment.RuleIds,
                        Message =
                            $"This suppression gives no reason, so it suppresses nothing. Write: powerlint: allow {rules} (why it is fine here).",
                        Range = comment.Comment.Range,
                    }
                );
            }
        }
    }
}
