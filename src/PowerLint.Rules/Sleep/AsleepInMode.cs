using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A peripheral that the program relies on and that does not run in the sleep mode in use.</summary>
internal sealed class AsleepInMode : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var peripheral in context.Device.Peripherals)
        {
            var relied = false;
            var observations = new List<Observation>();
            var missed = new List<Interrupt>();
            // Where a reset follows, the program starts anew: it asks no more of what ran before.
            foreach (var point in context.Points.Where(point => point.Sleeps && !point.EndsInReset))
            {
                var reliance = new Reliance(context, point, peripheral);
                relied |= reliance.IsReliedOn != Tristate.No;
                if (point.CertaintyOf(reliance.IsAsleep) is { } certainty)
                {
                    missed.AddRange(reliance.MissedInterrupts);
                    observations.Add(Observe(context, reliance, certainty));
                }
            }

            if (relied && observations.Count == 0)
            {
                context.Clean(peripheral.Name);
            }

            context.Report(
                observations,
                group => Message(peripheral, group, [.. missed.Distinct()]),
                group => MendOf(context.Device, peripheral, [.. missed.Distinct()], group)
            );
        }
    }

    private static Observation Observe(RuleContext context, Reliance reliance, Certainty certainty)
    {
        var point = reliance.Point;
        var decisions = point
            .State.DecisionsOf(reliance.Peripheral.On)
            .Concat(reliance.MissedInterrupts.SelectMany(interrupt => point.State.DecisionsOf(interrupt.Enabled)))
            .Distinct()
            .OrderBy(decision => decision.Ordinal)
            .ToImmutableArray();
        var level = context.LevelOf(certainty);
        return new Observation
        {
            Group = reliance.Peripheral.Name,
            Subject = reliance.Peripheral.Name,
            Certainty = certainty,
            // Nothing else can wake it either: it never comes back.
            Level =
                certainty == Certainty.Proven && point.CanWakeAtAll() == Tristate.No && level == Level.Warning
                    ? Level.Error
                    : level,
            Cause = EnablingStatement.Of(context, point, reliance.Peripheral, reliance.MissedInterrupts),
            Point = point,
            Flow = decisions,
        };
    }

    // Some peripherals run in a mode, and wake from it, only if one of their own bits says so.
    private static Mend? MendOf(
        DeviceModel device,
        Peripheral peripheral,
        IReadOnlyList<Interrupt> missed,
        ObservationGroup group
    )
    {
        var point = group.Points[0];
        var modes = missed.Count > 0 ? missed.Select(interrupt => interrupt.Wakes) : [peripheral.WorksIn];
        var writes = ImmutableArray.CreateBuilder<FieldCondition>();
        foreach (var allowed in modes)
        {
            var way = allowed.FirstOrDefault(entry =>
                point.Modes is [var mode]
                && entry.Modes.Contains(mode.Mode.Name, StringComparer.Ordinal)
                && entry.When.Alternatives is [var parts]
                && parts.All(part => peripheral.Registers.Contains(part.Field.Register))
                // A field of several bits chooses among sources.
                && parts.All(part => part.Field.WidthBits == 1 && !ChoosesClock(device, part.Field))
            );
            if (way is null)
            {
                return null;
            }

            writes.AddRange(
                Opposites
                    .Towards(point.State, way.When)
                    .Where(write => !writes.Any(other => other.Field == write.Field))
            );
        }

        return new Mend
        {
            Description = $"Let {peripheral.Name} run in {point.ModeName}",
            Writes = writes.ToImmutable(),
            Place = MendPlace.AfterCause,
            Cause = group.First.Cause,
            Points = [.. group.Points.Select(p => p.Point)],
            Because = "It draws its own current, and that of its clock, all through the sleep then.",
        };
    }

    // Another clock source asks for another part on the board, a crystal perhaps.
    private static bool ChoosesClock(DeviceModel device, FieldReference field) =>
        device.Oscillators.Any(oscillator =>
            oscillator.On.Fields.Contains(field)
            || oscillator.Consumers.Any(consumer => consumer.When.Fields.Contains(field))
        ) || device.Pins.SelectMany(pin => pin.Functions).Any(function => function.When.Fields.Contains(field));

    private static string Message(Peripheral peripheral, ObservationGroup group, IReadOnlyList<Interrupt> missed)
    {
        var first = group.First;
        var role =
            missed.Count > 0
                ? $"its {Wording.List([.. missed.Select(interrupt => interrupt.Name)])} {Wording.Number(missed.Count, "is", "are")} enabled but cannot end the sleep"
                : "its output is in use but stands still";
        return $"{peripheral.Name} does not run {Wording.Where(first.Point)}: {role}. "
            + "Choose a mode that keeps it running, wake by something that runs there, or switch it off before sleeping."
            + Wording.Doubt(first.Certainty, first.Point);
    }

    /// <summary>What the program expects of a peripheral while it sleeps.</summary>
    private sealed class Reliance(RuleContext context, PointFacts point, Peripheral peripheral)
    {
        public PointFacts Point => point;

        public Peripheral Peripheral => peripheral;

        /// <summary>Interrupts that are enabled and have a handler, but do not end the mode in use.</summary>
        public ImmutableArray<Interrupt> MissedInterrupts { get; } =
        [
            .. point
                .InterruptsOf(peripheral)
                .Where(interrupt =>
                    context.Result.HandledInterrupts.Contains(interrupt)
                    && point.IsEnabled(interrupt).And(point.CanWake(interrupt).Not()) != Tristate.No
                ),
        ];

        /// <summary>Whether an interrupt or output of the peripheral is wanted.</summary>
        public Tristate IsReliedOn =>
            point
                .IsOn(peripheral)
                .And(
                    point
                        .InterruptsOf(peripheral)
                        .Where(context.Result.HandledInterrupts.Contains)
                        .Select(point.IsEnabled)
                        .Any()
                        .Or(point.State.Evaluate(peripheral.OutputInUse))
                );

        /// <summary>Whether one is wanted and does not come.</summary>
        public Tristate IsAsleep =>
            point
                .IsOn(peripheral)
                .And(
                    MissedInterrupts
                        .Select(interrupt => point.IsEnabled(interrupt).And(point.CanWake(interrupt).Not()))
                        .Any()
                        .Or(point.State.Evaluate(peripheral.OutputInUse).And(point.Works(peripheral).Not()))
                );
    }
}
