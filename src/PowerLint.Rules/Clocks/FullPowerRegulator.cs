using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A regulator that stays at its full setting in a sleep mode, although nothing awake there needs that.</summary>
internal sealed class FullPowerRegulator : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var regulator in context.Device.Regulators)
        {
            var matters = context
                .Points.Where(point => point.Sleeps && point.InMode(regulator.Modes) != Tristate.No)
                .ToArray();
            var observations = matters
                .Select(point => Observe(context, regulator, point))
                .OfType<Observation>()
                .ToArray();
            if (observations.Length == 0 && matters.Length > 0)
            {
                context.Clean(regulator.Name);
            }

            context.Report(observations, group => Message(context, regulator, group));
        }
    }

    private static Observation? Observe(RuleContext context, Regulator regulator, PointFacts point)
    {
        var needed = regulator.NeededBy.Select(consumer => Needs(context.Device, point, consumer)).Any();
        var isFull = point.State.Evaluate(regulator.LowPower).Not();
        if (point.CertaintyOf(point.InMode(regulator.Modes).And(isFull).And(needed.Not())) is not { } certainty)
        {
            return null;
        }

        if (regulator.BoardNeeds is not null)
        {
            var isTold = context.Board.FittedRegulators.TryGetValue(regulator.Name, out var isFitted);
            if (isTold && !isFitted)
            {
                return null;
            }

            certainty = certainty == Certainty.Proven && !isTold ? Certainty.BoardDependent : certainty;
        }

        return new Observation
        {
            Group = regulator.Name,
            Subject = regulator.Name,
            Certainty = certainty,
            Level = context.LevelOf(certainty),
            Cause = Cause.Of(point.Point),
            Point = point,
            Flow = point.State.DecisionsOf(regulator.LowPower),
        };
    }

    private static Tristate Needs(DeviceModel device, PointFacts point, RegulatorConsumer consumer)
    {
        var when = point.State.Evaluate(consumer.When);
        if (device.Peripherals.FirstOrDefault(p => IsNamed(p.Name, consumer)) is { } peripheral)
        {
            return when.And(point.IsOn(peripheral)).And(point.Works(peripheral));
        }

        return device.Oscillators.FirstOrDefault(o => IsNamed(o.Name, consumer)) is { } oscillator
            ? when.And(point.State.Evaluate(oscillator.On)).And(point.InMode(oscillator.RunsIn))
            : when;
    }

    private static bool IsNamed(string name, RegulatorConsumer consumer) =>
        string.Equals(name, consumer.Name, StringComparison.Ordinal);

    private static string Message(RuleContext context, Regulator regulator, ObservationGroup group)
    {
        var first = group.First;
        var state = Wording.Fields(first.Point.State, regulator.LowPower);
        var board =
            regulator.BoardNeeds is { } needs && !context.Board.FittedRegulators.ContainsKey(regulator.Name)
                ? $", if the board has {needs}"
                : "";
        return $"The {regulator.Name} regulator stays at its full setting {Wording.Where(first.Point)}{(state.Length == 0 ? "" : $" ({state})")}, "
            + "but nothing that is awake there needs it. "
            + (
                regulator.LowPower.Alternatives is [var writes, ..] && !writes.IsEmpty
                    ? $"Before sleeping, set {Wording.Writes(writes)}{board}."
                    : $"Select the lower setting before sleeping{board}."
            )
            + Wording.Doubt(first.Certainty, first.Point);
    }
}
