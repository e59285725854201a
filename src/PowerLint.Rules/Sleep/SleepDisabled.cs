using PowerLint.Analysis;
using PowerLint.Devices;

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

            var mend = MendOf(context, found, certainty);
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
                ) with
                {
                    Mend = mend,
                }
            );
        }
    }

    // Setting the bit once more on a path where it is set already changes nothing, so that paths need not be told apart.
    private static Mend? MendOf(RuleContext context, PointFacts point, Certainty certainty)
    {
        if (
            context.Device.Sleep.EnableField is not { } enable
            // A part that would never come back is worse off than one that never sleeps.
            || point.CanWakeAtAll() == Tristate.No
            // A handler that clears the bit may come between it and the instruction.
            || point.State.DecisionsOf(enable).Any(decision => decision.Handler is not null)
            || new StateAfter(point.State, [new FieldCondition(enable, [1])]).Evaluate(context.Device.Sleep.Enable)
                != Tristate.Yes
        )
        {
            return null;
        }

        var wakes = point.CanWakeAtAll() == Tristate.Yes && !point.IsTainted;
        return new Mend
        {
            Description = "Enable sleep right before the instruction",
            Writes = [new FieldCondition(enable, [1])],
            Place = MendPlace.BeforeRest,
            Cause = Cause.Of(point.Point),
            Points = [point.Point],
            IsSafe = wakes && certainty == Certainty.Proven,
            Because = wakes
                ? "A wake source is enabled there."
                : "The part really stops here then: make sure that something wakes it.",
        };
    }

    private static Tristate IsDisabled(PointFacts point)
    {
        // The first pass alone counts, too: its sleep is lost for sure.
        var steady = point.SleepEnabled.Not();
        return steady == Tristate.No && point.Point.SleepEnabled != Tristate.Yes ? Tristate.Maybe : steady;
    }
}
