using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A pin in use as an analog input whose digital input buffer is on at a resting point.</summary>
internal sealed class AnalogPinBufferOn : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        var observations = new List<Observation>();
        foreach (var pin in context.Device.Pins.Where(pin => !pin.InputBufferOff.IsNever))
        {
            var before = observations.Count;
            var inUse = false;
            foreach (var point in context.Rests)
            {
                var facts = new PinFacts(context, point, pin);
                inUse |= facts.IsAnalogInUse != Tristate.No;
                if (point.CertaintyOf(facts.IsAnalogInUse.And(facts.BufferOn)) is { } certainty)
                {
                    observations.Add(Observe(context, point, pin, facts, certainty));
                }
            }

            if (inUse && observations.Count == before)
            {
                context.Clean(pin.Name);
            }
        }

        context.Report(observations, group => Message(context, group), group => MendOf(context, group));
    }

    private static Mend? MendOf(RuleContext context, ObservationGroup group)
    {
        var pins = group.Observations.Select(o => o.Pin!).ToArray();
        if (pins.Any(pin => pin.ParkWithBufferOff.IsEmpty))
        {
            return null;
        }

        var decisions = group.Observations.SelectMany(o => o.Point.State.DecisionsOf(o.Pin!.InputBufferOff)).ToArray();
        var isRead = group.Observations.Any(o => new PinFacts(context, o.Point, o.Pin!).IsReadByProgram);
        return new Mend
        {
            Description =
                $"Switch the digital input {Wording.Number(pins.Length, "buffer", "buffers")} of {Wording.List(group.Subjects)} off",
            Writes = [.. pins.SelectMany(pin => pin.ParkWithBufferOff)],
            Place = decisions.Length == 0 ? MendPlace.AtStart : MendPlace.AfterCause,
            Cause = Cause.LastOf(decisions, context.Result),
            Points = [.. group.Points.Select(point => point.Point)],
            IsSafe = !isRead,
            Because = isRead
                ? "The program also reads the level of a pin, which then always comes out as 0."
                : "The program never reads the level, and the analog input does not pass through the buffer.",
        };
    }

    private static Observation Observe(
        RuleContext context,
        PointFacts point,
        Pin pin,
        PinFacts facts,
        Certainty certainty
    )
    {
        var function = facts.AnalogFunctions.First(f => facts.IsInUse(f) != Tristate.No);
        var selecting = AnalogSelection.Decisions(context, point, function);
        var level = context.LevelOf(certainty);
        return new Observation
        {
            Group = pin.Port,
            Subject = pin.Name,
            Certainty = certainty,
            Level = facts.BufferIsCutInSleep ? level.AtMostNote() : level,
            Cause = selecting.IsEmpty ? Cause.Reset(context.Result) : Cause.Of(selecting[0]),
            Point = point,
            Flow =
            [
                .. selecting
                    .Concat(point.State.DecisionsOf(pin.InputBufferOff))
                    .Distinct()
                    .OrderBy(decision => decision.Ordinal),
            ],
            Pin = pin,
        };
    }

    private static string Message(RuleContext context, ObservationGroup group)
    {
        var first = group.First;
        var count = group.Observations.Length;
        var cut = new PinFacts(context, first.Point, first.Pin!).BufferIsCutInSleep;
        var where = cut
            ? $"while the CPU is awake ({first.Point.ModeName} itself cuts {Wording.Number(count, "it", "them")})"
            : Wording.Where(first.Point);
        var registers = Wording.Registers(
            first.Point.State,
            group.Observations.SelectMany(o => o.Pin!.InputBufferOff.Fields)
        );
        var writes = group.Observations.SelectMany(o => o.Pin!.ParkWithBufferOff).Distinct().ToImmutableArray();
        return $"{Wording.List(group.Subjects)} {Wording.Number(count, "is an analog input but keeps its digital input buffer", "are analog inputs but keep their digital input buffers")} "
            + $"on {where} ({registers}): a level between the rails makes a buffer draw current."
            + (writes.IsEmpty ? "" : $" Write {Wording.Writes(writes)}.")
            + Wording.Doubt(first.Certainty, first.Point);
    }
}
