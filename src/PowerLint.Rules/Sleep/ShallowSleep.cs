using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A sleep mode that is shallower than what wakes the part, and what runs meanwhile, asks for.</summary>
internal sealed class ShallowSleep : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        var observations = context
            .Points.Where(point => point.Sleeps)
            .Select(point => Observe(context, point))
            .OfType<Observation>()
            .ToArray();
        context.Report(
            observations,
            group => Message(context, group),
            group => MendOf(context, group),
            group => Waking(context, group)
        );
    }

    private static Observation? Observe(RuleContext context, PointFacts point)
    {
        // Where nothing wakes the part there is no saying what is deep enough; nor where the bits that stop the CPU choose among
        // several modes, as handlers change those, too.
        if (
            point.Modes.IsEmpty
            || (point.Modes[0].InUse != Tristate.Yes && context.Device.Sleep.StopsCpu is not null)
            || point.SleepEnabled != Tristate.Yes
        )
        {
            return null;
        }

        // Of several modes that may be in use, the shallowest costs most.
        var (mode, inUse) = point.Modes[0];
        var isWoken = IsWoken(context.Device, point, mode);
        if (isWoken == Tristate.No)
        {
            return null;
        }

        var deeper = context
            .Device.SleepModes.Where(other =>
                other.Resumes && other.Depth > mode.Depth && Serves(context.Device, point, mode, other)
            )
            .MaxBy(other => other.Depth);
        if (deeper is null)
        {
            context.Clean(mode.Name);
            return null;
        }

        var certainty = point.CertaintyOf(inUse.And(isWoken))!.Value;
        var decisions =
            inUse == Tristate.Yes
                ? point.State.DecisionsOf(mode.Selected)
                : EnablingStatement.Enabling(point.State, mode.Selected);
        if (context.Device.Sleep.StopsCpu is { } stop)
        {
            // The instruction that stops the CPU selects the mode, by the bits that it leaves alone, too.
            decisions = [.. decisions.Union(point.State.DecisionsOf(stop)).OrderBy(decision => decision.Ordinal)];
        }

        return new Observation
        {
            Group = mode.Name,
            Subject = $"{mode.Name} → {deeper.Name}",
            Certainty = certainty,
            Level = context.LevelOf(certainty),
            Cause = Cause.LastOf(decisions, context.Result),
            Point = point,
            Flow = decisions,
        };
    }

    // A source that a handler takes back and the program lets in again is one that may wake the part.
    private static Tristate IsWoken(DeviceModel device, PointFacts point, SleepMode mode) =>
        device.Interrupts.Select(interrupt => Wakes(point, interrupt, mode)).Any();

    private static Tristate Wakes(PointFacts point, Interrupt interrupt, SleepMode mode) =>
        point.IsEnabled(interrupt).And(point.Holds(interrupt.Wakes, mode));

    /// <summary>Whether all that wakes the part or works in one mode does so in another.</summary>
    private static bool Serves(DeviceModel device, PointFacts point, SleepMode mode, SleepMode other) =>
        device.Interrupts.All(interrupt =>
            Wakes(point, interrupt, mode) == Tristate.No || point.Holds(interrupt.Wakes, other) == Tristate.Yes
        )
        && device.Peripherals.All(peripheral =>
            point.State.Evaluate(peripheral.OutputInUse).And(point.Holds(peripheral.WorksIn, mode)) == Tristate.No
            || point.Holds(peripheral.WorksIn, other) == Tristate.Yes
        )
        && device.ClockOutputs.All(output =>
            point.State.Evaluate(output.On) == Tristate.No
            || point.Holds(output.RunsIn, mode) == Tristate.No
            || point.Holds(output.RunsIn, other) == Tristate.Yes
        );

    private static Mend? MendOf(RuleContext context, ObservationGroup group)
    {
        var point = group.Points[0];
        var now = point.Modes[0].Mode;
        if (group.Points.Any(p => p.Modes[0].InUse != Tristate.Yes))
        {
            return null;
        }

        var deeper = group.First.Subject.Split(" → ")[1];
        var mode = context.Device.SleepModes.First(m => string.Equals(m.Name, deeper, StringComparison.Ordinal));
        var writes = Opposites.Towards(point.State, mode.Selected);
        // What a debugger keeps running there makes it no deeper.
        var debugging = context.Device.Sleep.DebugInSleep;
        if (writes.IsEmpty || group.Points.Any(p => p.Holds(debugging, mode) != Tristate.No))
        {
            return null;
        }

        var old = now
            .Selected.Alternatives.SelectMany(alternative => alternative)
            .FirstOrDefault(part => part.Field == writes[0].Field);
        return new Mend
        {
            Description = $"Sleep in {deeper}",
            Writes = writes,
            Renames =
                writes is [var only] && old is { Values: [var before, ..] }
                    ? (only.Field, before, only.Values[0])
                    : null,
            Place = MendPlace.AfterCause,
            Cause = group.First.Cause,
            Points = [.. group.Points.Select(p => p.Point)],
            Because = WakeUp.Of(context, point, mode) is { } time
                ? $"Waking from {deeper} takes {time}: look up what is waiting for it."
                : $"Waking from {deeper} takes longer than from {now.Name}: look up how long, and what is waiting for it.",
        };
    }

    /// <summary>What the deeper mode asks for in return.</summary>
    private static IEnumerable<RelatedLocation> Waking(RuleContext context, ObservationGroup group)
    {
        var names = group.First.Subject.Split(" → ");
        if (WakingTimes(context, group) is not ({ } deeper, var time))
        {
            yield break;
        }

        var now = time is null ? "" : $", from {names[0]} {time}";
        yield return new RelatedLocation(group.Points[0].Point.Range, $"waking from {names[1]} takes {deeper}{now}");
    }

    private static (string? Deeper, string? Now) WakingTimes(RuleContext context, ObservationGroup group)
    {
        var modes = group.First.Subject.Split(" → ");
        return (Time(modes[1]), Time(modes[0]));

        string? Time(string name) =>
            WakeUp.Of(
                context,
                group.Points[0],
                context.Device.SleepModes.First(mode => string.Equals(mode.Name, name, StringComparison.Ordinal))
            );
    }

    private static string Message(RuleContext context, ObservationGroup group)
    {
        var first = group.First;
        var modes = first.Subject.Split(" → ");
        return $"The part sleeps in {modes[0]}, although all that wakes it and all that works meanwhile does so in {modes[1]}, too. "
            + (
                WakingTimes(context, group) is ({ } deeper, { } now)
                && string.Equals(deeper, now, StringComparison.Ordinal)
                    ? $"Select {modes[1]}: it takes no longer to wake up."
                    : $"Select {modes[1]}, if the longer time to wake up is no matter."
            )
            + Wording.Doubt(first.Certainty, first.Point);
    }
}
