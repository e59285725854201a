using System.Globalization;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A load that the pin keeps switched on while the part sleeps.</summary>
internal sealed class LoadDrivenInSleep : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var pin in context.Device.Pins)
        {
            if (context.Board.Pins.GetValueOrDefault(pin.Name) is not { Load: { } load, Active: { } active } board)
            {
                continue;
            }

            var observations = context
                .Points.Where(point => point.Sleeps)
                .Select(point => Observe(context, point, pin, active))
                .OfType<Observation>()
                .ToArray();
            if (observations.Length == 0 && context.Points.Any(point => point.Sleeps))
            {
                context.Clean(pin.Name);
            }

            context.Report(
                observations,
                group => Message(pin, load, active, board.Milliamps, group),
                group => MendOf(pin, load, group)
            );
        }
    }

    private static Observation? Observe(RuleContext context, PointFacts point, Pin pin, WireLevel active)
    {
        var high = point.State.Evaluate(pin.OutputHigh);
        var level = active switch
        {
            WireLevel.High => high,
            WireLevel.Low => high.Not(),
            _ => Tristate.Yes,
        };
        if (point.CertaintyOf(point.State.Evaluate(pin.Output).And(level)) is not { } certainty)
        {
            return null;
        }

        var driving =
            active == WireLevel.High
                ? EnablingStatement.Enabling(point.State, pin.OutputHigh)
                : point.State.DecisionsOf(pin.OutputHigh);
        var directing = EnablingStatement.Enabling(point.State, pin.Output);
        Decision[] decisions = [.. driving.Concat(directing).Distinct().OrderBy(decision => decision.Ordinal)];
        return new Observation
        {
            Group = pin.Port,
            Subject = pin.Name,
            Certainty = certainty,
            Level = context.LevelOf(certainty),
            Cause = Cause.LastOf(decisions, context.Result),
            Point = point,
            Flow = [.. decisions],
            Pin = pin,
        };
    }

    private static Mend? MendOf(Pin pin, string load, ObservationGroup group)
    {
        // The level is the one that is sure at every point: what brings it back after waking is the same one.
        var levels = pin
            .OutputHigh.Alternatives.Take(1)
            .SelectMany(alternative => alternative)
            .Where(part => part.Field.WidthBits == 1)
            .Select(part => part.Field)
            .ToArray();
        if (levels is not [var level] || pin.OutputHigh.Alternatives.Length != 1)
        {
            return null;
        }

        var held = group.Points.Select(point => point.State.Read(level)).Distinct().ToArray();
        if (held is not [{ Known: not 0 } now])
        {
            return null;
        }

        return new Mend
        {
            Description = $"Switch the {load} on {pin.Name} off before sleeping and on again after it",
            Writes = [new FieldCondition(level, [now.Value ^ 1])],
            Restore = [new FieldCondition(level, [now.Value])],
            Place = MendPlace.BeforeRest,
            Cause = group.First.Cause,
            Points = [.. group.Points.Select(point => point.Point)],
            Because =
                $"The {load} is off in sleep then: make sure that nothing needs it there, and that it is ready soon enough after waking.",
        };
    }

    private static string Message(Pin pin, string load, WireLevel active, double? milliamps, ObservationGroup group)
    {
        var first = group.First;
        var level = active switch
        {
            WireLevel.High => "high",
            WireLevel.Low => "low",
            _ => "as an output",
        };
        var cost = milliamps is { } value ? string.Create(CultureInfo.InvariantCulture, $" ({value:0.###} mA)") : "";
        return $"{pin.Name} drives {level} {Wording.Where(first.Point)} and so keeps the {load} on{cost}. "
            + "Switch it off before sleeping."
            + Wording.Doubt(first.Certainty, first.Point);
    }
}
