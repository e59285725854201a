using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>An oscillator that runs on in the sleep mode in use although nothing awake there needs it.</summary>
internal sealed class OscillatorKeptOn : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var oscillator in context.Device.Oscillators.Where(oscillator => oscillator.On.Fields.Any()))
        {
            var observations = context
                .Points.Where(point => point.Sleeps)
                .Select(point => Observe(context, oscillator, point))
                .OfType<Observation>()
                .ToArray();
            if (observations.Length == 0 && context.Points.Any(point => point.Sleeps))
            {
                context.Clean(oscillator.Name);
            }

            context.Report(
                observations,
                group => Message(oscillator, group),
                group => MendOf(context, oscillator, group)
            );
        }
    }

    private static Observation? Observe(RuleContext context, Oscillator oscillator, PointFacts point)
    {
        var runs = point.State.Evaluate(oscillator.On).And(point.InMode(oscillator.RunsIn));
        var consumed = oscillator.Consumers.Select(consumer => Consumes(context.Device, point, consumer)).Any();
        if (point.CertaintyOf(runs.And(consumed.Not())) is not { } certainty)
        {
            return null;
        }

        var decisions = point.State.DecisionsOf(oscillator.On);
        return new Observation
        {
            Group = oscillator.Name,
            Subject = oscillator.Name,
            Certainty = certainty,
            Level = context.LevelOf(certainty),
            Cause = Cause.LastOf(decisions, context.Result),
            Point = point,
            Flow = decisions,
        };
    }

    private static Tristate Consumes(DeviceModel device, PointFacts point, OscillatorConsumer consumer) =>
        device.Peripherals.FirstOrDefault(p => string.Equals(p.Name, consumer.Peripheral, StringComparison.Ordinal))
            is { } peripheral
            ? point.State.Evaluate(consumer.When).And(point.IsOn(peripheral)).And(point.Works(peripheral))
            : point.State.Evaluate(consumer.When);

    // A program that waits for the ready bit would wait for ever.
    private static bool IsWaitedFor(RuleContext context, FieldReference field) =>
        context.Device.FollowingFields.Any(follows =>
            follows.Leader == field && context.Result.Reads(follows.Follower)
        );

    // Pins that a crystal sits on become plain inputs without a level once it is off.
    private static bool HasPins(DeviceModel device, FieldReference field) =>
        device.Pins.SelectMany(pin => pin.Functions).Any(function => function.When.Fields.Contains(field));

    private static Mend? MendOf(RuleContext context, Oscillator oscillator, ObservationGroup group)
    {
        if (
            Opposites.Of(group.First.Point.State, oscillator.On, _ => true) is not { } writes
            || writes.Any(w => HasPins(context.Device, w.Field) || IsWaitedFor(context, w.Field))
        )
        {
            return null;
        }

        return new Mend
        {
            Description = $"Switch the {oscillator.Name} oscillator off",
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
            Because = "What runs from it while the CPU is awake stands still then.",
        };
    }

    private static string Message(Oscillator oscillator, ObservationGroup group)
    {
        var first = group.First;
        var state = Wording.Fields(first.Point.State, oscillator.On);
        return $"The {oscillator.Name} oscillator runs on {Wording.Where(first.Point)}{(state.Length == 0 ? "" : $" ({state})")}, "
            + "but nothing that is awake there uses it. Switch it off before sleeping, or let it run on demand only."
            + Wording.Doubt(first.Certainty, first.Point);
    }
}
