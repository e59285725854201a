using System.Collections.Immutable;

namespace PowerLint.Rules;

/// <summary>A suppression that suppresses nothing: the finding is gone, the rule's name is wrong, or it was not understood.</summary>
internal sealed class UnusedSuppression : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var comment in context.Suppressions?.Comments ?? [])
        {
            if (comment.RuleIds.IsEmpty)
            {
                Report(
                    context,
                    comment,
                    [],
                    "This comment was not understood. Write: powerlint: allow RULE (why it is fine here)."
                );
                continue;
            }

            var unknown = comment.RuleIds.Where(id => RuleCatalog.Find(id) is null).ToImmutableArray();
            if (!unknown.IsEmpty)
            {
                Report(
                    context,
                    comment,
                    unknown,
                    $"There is no rule {Wording.List(unknown)}. 'powerlint rules' lists them."
                );
            }

            var unused = context
                .Suppressions!.UnusedRuleIds(comment)
                .Where(id => RuleCatalog.Find(id) is not null && context.Settings.IsOn(id))
                .ToImmutableArray();
            if (!unused.IsEmpty && comment.Reason is not null)
            {
                Report(
                    context,
                    comment,
                    unused,
                    $"{Wording.List(unused)} {Wording.Number(unused.Length, "does", "do")} not fire here any more: remove the suppression."
                );
            }
        }
    }

    private static void Report(
        RuleContext context,
        SuppressionComment comment,
        ImmutableArray<string> subjects,
        string message
    ) =>
        context.Report(
            new Finding
            {
                RuleId = context.Rule.Id,
                Level = context.LevelOf(Certainty.Proven),
                Certainty = Certainty.Proven,
                Subjects = subjects,
                Message = message,
                UselessComment =
                    subjects.Length > 0 && subjects.Length == comment.RuleIds.Length ? comment.Comment.Range : null,
                Range = comment.Comment.Range,
            }
        );
}
