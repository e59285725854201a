using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A peripheral that draws current in the sleep mode in use and serves nothing there.</summary>
internal sealed class PeripheralOnInSleep : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var peripheral in context.Device.Peripherals.Where(IsSwitchedByProgram))
        {
            var observations = context
                .Points.Where(point => point.Sleeps)
                .Select(point => Observe(context, point, peripheral))
                .OfType<Observation>()
                .ToArray();
            if (observations.Length == 0 && context.Points.Any(point => point.Sleeps))
            {
                context.Clean(peripheral.Name);
            }

            context.Report(
                observations,
                group => Message(peripheral, group),
                group => MendOf(context, peripheral, group)
            );
        }
    }

    // What only fuses or options switch on is a decision of the product's; a brown-out detector has a rule of its own.
    private static bool IsSwitchedByProgram(Peripheral peripheral) =>
        !peripheral.GuardsSupply && peripheral.On.Fields.Any(field => field.Register.Kind != RegisterKind.Option);

    private static Observation? Observe(RuleContext context, PointFacts point, Peripheral peripheral)
    {
        var serves = point
            .InterruptsOf(peripheral)
            .Select(point.IsWakeSource)
            .Any()
            .Or(point.State.Evaluate(peripheral.OutputInUse).And(point.Works(peripheral)));
        if (point.CertaintyOf(point.Draws(peripheral).And(serves.Not())) is not { } certainty)
        {
            return null;
        }

        // Where it is not known whether it is on: if what switches it on makes it wake the part as well, it wastes nothing.
        var isServing = peripheral
            .On.Alternatives.Where(on => on.All(field => point.State.Evaluate(field) != Tristate.No))
            .All(on => WakesWhenever(on, point, peripheral));
        if (isServing)
        {
            return null;
        }

        return new Observation
        {
            Group = peripheral.Name,
            Subject = peripheral.Name,
            Certainty = certainty,
            Level = context.LevelOf(certainty),
            Cause = EnablingStatement.Of(context, point, peripheral, []),
            Point = point,
            Flow = point.State.DecisionsOf(peripheral.On),
        };
    }

    private static Mend? MendOf(RuleContext context, Peripheral peripheral, ObservationGroup group)
    {
        if (
            peripheral.SwitchOff.IsEmpty
            || group.Points.Any(point =>
                new StateAfter(point.State, peripheral.SwitchOff).Evaluate(peripheral.On) != Tristate.No
            )
        )
        {
            return null;
        }

        if (!context.Result.Uses(peripheral))
        {
            return new Mend
            {
                Description = $"Switch {peripheral.Name} off at start-up",
                Writes = peripheral.SwitchOff,
                Place = MendPlace.AtStart,
                Cause = group.First.Cause,
                Points = [.. group.Points.Select(point => point.Point)],
                IsSafe = true,
                Because = "The program never touches it.",
            };
        }

        if (group.Points.Any(point => LetsPinsFloat(context.Device, point, peripheral)))
        {
            return null;
        }

        // Only what is the same at every point, and known, can be given back after waking.
        var restore = ImmutableArray.CreateBuilder<FieldCondition>();
        foreach (var write in peripheral.SwitchOff)
        {
            var held = group.Points.Select(point => point.State.Read(write.Field)).Distinct().ToArray();
            if (held is not [var now] || !now.Knows(write.Field.Mask >> write.Field.LowBit))
            {
                return null;
            }

            if (now.Value != write.Values[0])
            {
                restore.Add(write with { Values = [now.Value] });
            }
        }

        return new Mend
        {
            Description = $"Switch {peripheral.Name} off before sleeping and on again after it",
            Writes = [.. peripheral.SwitchOff.Where(write => restore.Any(back => back.Field == write.Field))],
            Restore = restore.ToImmutable(),
            Place = MendPlace.BeforeRest,
            Cause = group.First.Cause,
            Points = [.. group.Points.Select(point => point.Point)],
            Because = "What it is doing when the CPU goes to sleep is cut short, and it settles anew after waking.",
        };
    }

    // An analog input has its digital buffer off as long as the peripheral has the pin.
    private static bool LetsPinsFloat(DeviceModel device, PointFacts point, Peripheral peripheral)
    {
        var off = new StateAfter(point.State, peripheral.SwitchOff);
        return device
            .Pins.Where(pin =>
                Array.TrueForAll(
                    [pin.Output, pin.PullUp, pin.PullDown],
                    condition => point.State.Evaluate(condition) != Tristate.Yes
                )
            )
            .SelectMany(pin =>
                pin.Functions.Where(function => function is { Kind: PinFunctionKind.Analog, Latched: false })
                    .Select(function => function.When)
                    .Append(pin.InputBufferOff)
            )
            .Any(condition => point.State.Evaluate(condition) != Tristate.No && off.Evaluate(condition) == Tristate.No);
    }

    private static bool WakesWhenever(ImmutableArray<FieldCondition> on, PointFacts point, Peripheral peripheral) =>
        point
            .InterruptsOf(peripheral)
            .Where(interrupt => point.CanWake(interrupt) == Tristate.Yes)
            .SelectMany(interrupt => interrupt.Enabled.Alternatives)
            .Any(enabled =>
                enabled.All(field => point.State.Evaluate(field) == Tristate.Yes || on.Any(set => Implies(set, field)))
            );

    private static bool Implies(FieldCondition set, FieldCondition other) =>
        set.Field == other.Field && set.Values.IsSubsetOf(other.Values);

    private static string Message(Peripheral peripheral, ObservationGroup group)
    {
        var first = group.First;
        var state = Wording.Fields(first.Point.State, peripheral.On);
        var off = Wording.Writes(peripheral.SwitchOff);
        return $"{peripheral.Name} draws current {Wording.Where(first.Point)}{(state.Length == 0 ? "" : $" ({state})")}, "
            + "but it wakes nothing and nothing there uses it. "
            + (off.Length == 0 ? "Switch it off before sleeping." : $"Switch it off before sleeping: {off}.")
            + Wording.Doubt(first.Certainty, first.Point);
    }
}
