using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A handler's flag is tested to decide whether to sleep, and the handler can come between the test and the sleep.</summary>
internal sealed class CheckThenSleepRace : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var guard in context.Result.GuardedSleeps)
        {
            var point = context.Points.FirstOrDefault(point => point.Sleeps && point.Point.Range == guard.Sleep);
            // What ends in a reset waits for no handler.
            if (point is null || point.EndsInReset)
            {
                continue;
            }

            if (point.CertaintyOf(guard.IsExposed) is not { } certainty || HandlerStopsSleep(context, point, guard))
            {
                foreach (var variable in guard.Variables)
                {
                    context.Clean(variable);
                }

                continue;
            }

            var finding = context.AtPoint(point, certainty, guard.Variables, Message(guard, certainty, point), []);
            context.Report(
                finding with
                {
                    Related = [new RelatedLocation(guard.Test, "the test"), .. finding.Related],
                }
            );
        }
    }

    // A handler that takes the sleep-enable bit back makes the instruction do nothing: its flag is not missed.
    private static bool HandlerStopsSleep(RuleContext context, PointFacts point, GuardedSleep guard) =>
        context.Device.Sleep.EnableField is { } enable
        && guard.Handlers.All(handler =>
            point
                .State.DecisionsOf(enable)
                .Any(decision =>
                    string.Equals(decision.Handler, handler, StringComparison.Ordinal)
                    && !EnablingStatement.Allows(decision, new FieldCondition(enable, [1]))
                )
        );

    private static string Message(GuardedSleep guard, Certainty certainty, PointFacts point)
    {
        var variables = Wording.List(guard.Variables);
        var handlers = Wording.List(guard.Handlers);
        return $"Whether to sleep here hangs on {variables}, which {handlers} {Wording.Number(guard.Handlers.Length, "changes", "change")}. "
            + $"Interrupts {(guard.IsExposed == Tristate.Yes ? "are" : "may be")} on between the test and the sleep: one that comes there is slept through until the next. "
            + "Test with interrupts off, and switch them on in the instruction right before the sleep, or sleep with them masked where the core wakes all the same."
            + (guard.IsExposed == Tristate.Yes ? Wording.Doubt(certainty, point) : "");
    }
}
