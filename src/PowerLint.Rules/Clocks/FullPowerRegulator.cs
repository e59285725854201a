using System.Collections.Immutable;
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

            context.Report(
                observations,
                group => Message(context, regulator, group),
                group => MendOf(context, regulator, group)
            );
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

    private static Mend? MendOf(RuleContext context, Regulator regulator, ObservationGroup group)
    {
        var writes = Opposites.Towards(group.First.Point.State, regulator.LowPower);
        if (
            writes.IsEmpty
            || group.Points.Any(point =>
                new StateAfter(point.State, writes).Evaluate(regulator.LowPower) != Tristate.Yes
            )
        )
        {
            return null;
        }

        var isForGood = IsForGood(context, regulator);
        var restore = isForGood ? [] : HeldBefore(writes, group);
        if (!isForGood && restore.IsEmpty)
        {
            return null;
        }

        ImmutableArray<Decision> decisions =
        [
            .. writes.SelectMany(write => group.First.Point.State.DecisionsOf(write.Field)).Distinct(),
        ];
        return new Mend
        {
            Description = $"Select the low-power setting of {regulator.Name}",
            Writes = writes,
            Restore = restore,
            Undoes = isForGood ? decisions : [],
            Renames =
                isForGood && writes is [var only] && group.First.Point.State.Read(only.Field) is { Value: var old }
                    ? (only.Field, old, only.Values[0])
                    : null,
            Place = isForGood ? MendPlace.AfterCause : MendPlace.BeforeRest,
            Cause = isForGood ? Cause.LastOf(decisions, context.Result) : group.First.Cause,
            Points = [.. group.Points.Select(point => point.Point)],
            IsForEveryWay = true,
            Because = regulator.BoardNeeds is { } needs
                ? $"The board must have {needs}: without it the part may fail."
                : "The setting carries less current and wakes up later: look up what it supplies, from which voltage on, and how long waking takes.",
        };
    }

    // A setting that counts in sleep alone, and that no sleep of the program is against, is made once. One that counts while the
    // CPU runs, too, or with some clocks only, holds for the sleep.
    private static bool IsForGood(RuleContext context, Regulator regulator) =>
        regulator.Modes.Any(entry => entry.When.Alternatives.Any(alternative => alternative.IsEmpty))
        && regulator.LowPower.Fields.All(field =>
            regulator.LowPower.Alternatives[0].Any(part => part.Field.Register == field.Register)
        )
        && context
            .Points.Where(point => point.Sleeps)
            .All(point =>
                point.Modes.All(mode =>
                    !regulator.Modes.Any(entry => entry.Modes.Contains(mode.Mode.Name, StringComparer.Ordinal))
                    || point.Holds(regulator.Modes, mode.Mode) == Tristate.Yes
                ) && regulator.NeededBy.All(consumer => Needs(context.Device, point, consumer) == Tristate.No)
            );

    // What the fields hold at every point, or nothing where that is not one known value.
    private static ImmutableArray<FieldCondition> HeldBefore(
        ImmutableArray<FieldCondition> writes,
        ObservationGroup group
    )
    {
        var held = ImmutableArray.CreateBuilder<FieldCondition>();
        foreach (var field in writes.Select(write => write.Field))
        {
            var values = group.Points.Select(point => point.State.Read(field)).Distinct().ToArray();
            if (values is not [var one] || !one.Knows(field.Mask >> field.LowBit))
            {
                return [];
            }

            held.Add(new FieldCondition(field, [one.Value]));
        }

        return held.ToImmutable();
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
