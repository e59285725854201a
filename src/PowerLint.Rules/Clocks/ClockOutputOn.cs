using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A clock that is routed to a pin at a resting point.</summary>
internal sealed class ClockOutputOn : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        var on = new HashSet<string>(StringComparer.Ordinal);
        foreach (var output in context.Device.ClockOutputs)
        {
            var observations = context
                .Rests.Select(point => Observe(context, output, point))
                .OfType<Observation>()
                .ToArray();
            if (observations.Length > 0)
            {
                on.Add(output.Name);
            }

            context.Report(observations, group => Message(output, group), group => MendOf(context, output, group));
        }

        // One clock may have several outputs to choose from.
        foreach (var name in context.Device.ClockOutputs.Select(output => output.Name).Distinct(StringComparer.Ordinal))
        {
            if (!on.Contains(name) && context.Rests.Count > 0)
            {
                context.Clean(name);
            }
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
            Cause = Cause.LastOf(Routing(context, output, point), context.Result),
            Point = point,
            Flow = decisions,
        };
    }

    // That the pin is an output decides, too, but the statement that routes the clock is the one to blame.
    private static IEnumerable<Decision> Routing(RuleContext context, ClockOutput output, PointFacts point)
    {
        var pin = context.Device.Pins.FirstOrDefault(p => string.Equals(p.Name, output.Pin, StringComparison.Ordinal));
        var ofPin = pin?.Output.Fields.ToHashSet() ?? [];
        var routing = output
            .On.Fields.Where(field => !ofPin.Contains(field))
            .SelectMany(field => point.State.DecisionsOf(field))
            .ToArray();
        return routing.Length > 0 ? routing : point.State.DecisionsOf(output.On);
    }

    private static Mend? MendOf(RuleContext context, ClockOutput output, ObservationGroup group)
    {
        var pin = context.Device.Pins.FirstOrDefault(p => string.Equals(p.Name, output.Pin, StringComparison.Ordinal));
        var ofPin = pin?.Output.Fields.ToHashSet() ?? [];
        if (Opposites.Of(group.First.Point.State, output.On, field => !ofPin.Contains(field)) is not { } writes)
        {
            return null;
        }

        return new Mend
        {
            Description = $"Route {output.Name} to no pin",
            Writes = writes,
            Place = MendPlace.AfterCause,
            Cause = group.First.Cause,
            Points = [.. group.Points.Select(point => point.Point)],
            Undoes =
            [
                .. group
                    .Points.SelectMany(point => writes.SelectMany(w => point.State.DecisionsOf(w.Field)))
                    .Distinct(),
            ],
            Because = "Whatever on the board runs from this clock stands still then.",
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
