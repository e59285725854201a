using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A digital input without a level at a resting point.</summary>
internal sealed class FloatingPin : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        var switches = new PinSwitches(context.Device);
        var observations = new List<Observation>();
        foreach (var pin in context.Device.Pins)
        {
            var before = observations.Count;
            foreach (var point in context.Rests)
            {
                var facts = new PinFacts(context, point, pin);
                if (!facts.IsSettledByBoard && point.CertaintyOf(facts.Floats) is { } certainty)
                {
                    observations.Add(Observe(context, switches, point, pin, facts, certainty));
                }
            }

            if (observations.Count == before && context.Rests.Count > 0)
            {
                context.Clean(pin.Name);
            }
        }

        context.Report(observations, group => Message(context, group), group => MendOf(context, group));
    }

    // A pull-up harms nothing that drives the pin; what nothing outside can drive may get it unseen.
    private static Mend? MendOf(RuleContext context, ObservationGroup group)
    {
        var writes = ImmutableArray.CreateBuilder<FieldCondition>();
        foreach (var observation in group.Observations)
        {
            var pin = observation.Pin!;
            var pull = new StateAfter(observation.Point.State, pin.ParkWithPullUp).Evaluate(pin.PullUp);
            if (
                pin.ParkWithPullUp.IsEmpty
                || pull != Tristate.Yes
                || pin.ParkWithPullUp.Any(write => IsChangedElsewhere(context, observation.Point, write.Field))
            )
            {
                return null;
            }

            // What holds already needs no statement.
            writes.AddRange(pin.ParkWithPullUp.Where(write => observation.Point.State.Evaluate(write) != Tristate.Yes));
        }

        var isOpen = group.Observations.All(o =>
            new PinFacts(context, o.Point, o.Pin!) is { IsBonded: false } or { Board.IsConnected: false }
        );
        var count = group.Observations.Length;
        return new Mend
        {
            Description =
                $"Give {Wording.List(group.Subjects)} {Wording.Number(count, "its pull-up", "their pull-ups")}",
            Writes = writes.ToImmutable(),
            Place = MendPlace.AfterCause,
            Cause = group.First.Cause,
            Points = [.. group.Points.Select(point => point.Point)],
            IsForEveryWay = true,
            IsSafe = isOpen,
            Because = isOpen
                ? $"Nothing outside can reach {Wording.Number(count, "the pad", "the pads")}."
                : $"Look at the board first: if something drives {Wording.Number(count, "the pin", "the pins")} low, a pull-up works against it, and the board file is the place to say so.",
        };
    }

    // What else the program does with the bits, it does on what it left them at: a toggle, a pull of its own for a while.
    private static bool IsChangedElsewhere(RuleContext context, PointFacts point, FieldReference field)
    {
        var isKnown = point.State.Read(field).Knows(field.Mask >> field.LowBit);
        var deciding = point.State.DecisionsOf(field).Select(decision => decision.Range).ToHashSet();
        return context.Result.ChangesOf(field).Any(range => !isKnown || !deciding.Contains(range));
    }

    private static Observation Observe(
        RuleContext context,
        PinSwitches switches,
        PointFacts point,
        Devices.Pin pin,
        PinFacts facts,
        Certainty certainty
    )
    {
        // What the package does not bring out nothing can drive, and of what the board file names it says what does.
        var isWired = facts is { IsBonded: true, Board: null };
        if (certainty == Certainty.Proven && isWired && facts.IsReadByProgram)
        {
            certainty = Certainty.BoardDependent;
        }

        var decisions = facts.DecidingWrites(switches);
        var level = context.LevelOf(certainty);
        return new Observation
        {
            Group = pin.Port,
            Subject = pin.Name,
            Certainty = certainty,
            Level = facts.BufferIsCutInSleep ? level.AtMostNote() : level,
            Cause = Cause.LastOf(decisions, context.Result),
            Point = point,
            Flow = decisions,
            Pin = pin,
        };
    }

    private static string Message(RuleContext context, ObservationGroup group)
    {
        var first = group.First;
        var count = group.Observations.Length;
        var cut = new PinFacts(context, first.Point, first.Pin!).BufferIsCutInSleep;
        var where = cut
            ? $"while the CPU is awake ({first.Point.ModeName} itself cuts {Wording.Number(count, "its input buffer", "their input buffers")})"
            : Wording.Where(first.Point);
        var switches = new PinSwitches(context.Device);
        var registers = Wording.Registers(
            first.Point.State,
            group
                .Observations.SelectMany(o =>
                    new PinFacts(context, o.Point, o.Pin!).Conditions.SelectMany(condition => condition.Fields)
                )
                .Where(field => !switches.SelectMode(field))
        );
        var hidden = group
            .Observations.Where(o => !new PinFacts(context, o.Point, o.Pin!).IsBonded)
            .Select(o => o.Subject)
            .ToArray();
        return $"{Wording.List(group.Subjects)} {Wording.Number(count, "floats", "float")} {where}: "
            + $"{Wording.Number(count, "a digital input", "digital inputs")} with the buffer on and no pull ({registers}). "
            + (
                hidden.Length == 0
                    ? ""
                    : $"The package does not bring out {Wording.List(hidden)}, but the pad inside floats all the same. "
            )
            + (
                first.Certainty == Certainty.BoardDependent
                    ? $"The program listens to {Wording.Number(count, "it", "them")}: if the board drives or pulls {Wording.Number(count, "the pin", "the pins")}, say so in the board file; else add a pull."
                    : $"Drive {Wording.Number(count, "it", "them")} as {Wording.Number(count, "an output", "outputs")}, or give {Wording.Number(count, "it its pull", "them their pulls")}."
            )
            + Wording.Doubt(first.Certainty, first.Point);
    }
}
