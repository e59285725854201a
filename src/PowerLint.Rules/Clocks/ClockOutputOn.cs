using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A clock that is routed to a pin at a resting point.</summary>
internal sealed class ClockOutputOn : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var output in context.Device.ClockOutputs)
        {
            var observations = context
                .Rests.Select(point => Observe(context, output, point))
                .OfType<Observation>()
                .ToArray();
            if (observations.Length == 0 && context.Rests.Count > 0)
            {
                context.Clean(output.Name);
            }

            context.Report(observations, group => Message(output, group));
        }
    }

    private static Observation? Observe(RuleContext context, ClockOutput output, PointFacts point)
    {
        if (point.CertaintyOf(point.State.Evaluate(output.On)) is not { } certainty)
        {
            return null;
        }

        var level = context.LevelOf(certainty);
        var decisions = point.State.DecisionsOf(output.On);
        return new Observation
        {
            Group = output.Name,
            Subject = output.Name,
            MoreSubjects = output.Pin is { } pin ? [pin] : [],
            Certainty = certainty,
            Level = Stops(output, point) ? level.AtMostNote() : level,
            Cause = Cause.LastOf(decisions, context.Result),
            Point = point,
            Flow = decisions,
        };
    }

    private static bool Stops(ClockOutput output, PointFacts point) =>
        point.SleepEnabled == Tristate.Yes && !point.Modes.IsEmpty && point.InMode(output.RunsIn) == Tristate.No;

    private static string Message(ClockOutput output, ObservationGroup group)
    {
        var first = group.First;
        var where = Stops(output, first.Point)
            ? $"while the CPU is awake ({first.Point.ModeName} itself stops the clock)"
            : Wording.Where(first.Point);
        var registers = Wording.Fields(first.Point.State, output.On);
        return $"{output.Name} drives a clock out{(output.Pin is { } pin ? $" on {pin}" : "")} {where}"
            + $"{(registers.Length == 0 ? " (set by a fuse or option)" : $" ({registers})")}: every edge charges and discharges the trace. "
            + "Switch the output off once nobody needs it."
            + Wording.Doubt(first.Certainty, first.Point);
    }
}
