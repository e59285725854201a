using PowerLint.Analysis;

namespace PowerLint.Rules;

/// <summary>A sleep instruction that is reached with the sleep-enable bit 0.</summary>
internal sealed class SleepDisabled : IRule
{
    private const string Subject = "SLEEP";

    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        var places = context
            .Points.Where(point => point.Point.Kind == RestingKind.Sleep)
            .GroupBy(point => point.Point.Range);
        foreach (var place in places)
        {
            var worst = place
                .Select(point => (Point: point, Certainty: point.CertaintyOf(IsDisabled(point))))
                .Where(candidate => candidate.Certainty is not null)
                .OrderBy(candidate => candidate.Certainty)
                .FirstOrDefault();
            if (worst.Point is not { } found || worst.Certainty is not { } certainty)
            {
                context.Clean(Subject);
                continue;
            }

            // With several ways to the instruction, one of which is fine, not every sleep is lost.
            if (certainty == Certainty.Proven && place.Any(point => IsDisabled(point) != Tristate.Yes))
            {
                certainty = Certainty.Possible;
            }

            var enable = Wording.Fields(found.State, context.Device.Sleep.Enable);
            context.Report(
                context.AtPoint(
                    found,
                    certainty,
                    [Subject],
                    $"The sleep instruction does nothing {(certainty == Certainty.Proven ? "here" : "here on some paths")}: sleep is not enabled ({enable}), so the CPU runs on. "
                        + "Set the sleep-enable bit right before it."
                        + Wording.Doubt(certainty, found),
                    found.State.DecisionsOf(context.Device.Sleep.Enable)
                )
            );
        }
    }

    private static Tristate IsDisabled(PointFacts point)
    {
        // The first pass alone counts, too: its sleep is lost for sure.
        var steady = point.SleepEnabled.Not();
        return steady == Tristate.No && point.Point.SleepEnabled != Tristate.Yes ? Tristate.Maybe : steady;
    }
}
