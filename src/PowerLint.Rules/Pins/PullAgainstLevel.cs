using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>An internal pull that works against a level that is known.</summary>
internal sealed class PullAgainstLevel : IRule
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
                Observe(context, point, pin, pin.PullUp, WireLevel.Low, switches, observations);
                Observe(context, point, pin, pin.PullDown, WireLevel.High, switches, observations);
            }

            if (observations.Count == before && context.Board.Pins.ContainsKey(pin.Name))
            {
                context.Clean(pin.Name);
            }
        }

        context.Report(observations, group => Message(context, group), group => MendOf(context, group));
    }

    private static Mend? MendOf(RuleContext context, ObservationGroup group)
    {
        var switches = new PinSwitches(context.Device);
        var writes = ImmutableArray.CreateBuilder<FieldCondition>();
        foreach (var observation in group.Observations)
        {
            // One of the bits that make the pull up, such that no pull at all is left.
            var pin = observation.Pin!;
            var write = observation
                .Condition!.Alternatives.SelectMany(alternative => alternative)
                .Where(part => !part.Values.Contains(0UL) && !switches.AreShared(part.Field))
                .Where(part => !pin.Output.Fields.Contains(part.Field))
                .Select(part => part with { Values = [0] })
                .FirstOrDefault(off =>
                    new StateAfter(observation.Point.State, [off]) is var after
                    && after.Evaluate(pin.PullUp).Or(after.Evaluate(pin.PullDown)) == Tristate.No
                );
            if (write is null)
            {
                return null;
            }

            writes.Add(write);
        }

        var all = writes.ToImmutable();
        var undone = group.Observations.SelectMany(o => all.SelectMany(w => o.Point.State.DecisionsOf(w.Field)));
        return new Mend
        {
            Description =
                $"Switch the {Wording.Number(all.Length, "pull", "pulls")} of {Wording.List(group.Subjects)} off",
            Writes = all,
            Place = MendPlace.AfterCause,
            Cause = group.First.Cause,
            Points = [.. group.Points.Select(point => point.Point)],
            Undoes = [.. undone.Distinct()],
            IsSafe = true,
            Because =
                "The level is given all the same, by the board as the board file has it or by the program itself.",
        };
    }

    private static void Observe(
        RuleContext context,
        PointFacts point,
        Pin pin,
        Condition pull,
        WireLevel against,
        PinSwitches switches,
        List<Observation> observations
    )
    {
        var outside =
            context.Board.Pins.GetValueOrDefault(pin.Name) is { } board
            && (board.Pull == against || board.Driven == against);
        var high = point.State.Evaluate(pin.OutputHigh);
        // Bits that are not known are judged one by one: where a pull is never in force on an output, no state holds both.
        var inside = Excludes(pull, pin.Output)
            ? Tristate.No
            : point.State.Evaluate(pin.Output).And(against == WireLevel.Low ? high.Not() : high);
        var holds = point.State.Evaluate(pull).And(outside ? Tristate.Yes : inside);
        if (point.CertaintyOf(holds) is not { } certainty)
        {
            return;
        }

        // The choice of the sleep mode may decide which pull is in force, but is no setting of the pin.
        ImmutableArray<Decision> decisions =
        [
            .. pull
                .Fields.Where(field => !switches.SelectMode(field))
                .SelectMany(field => point.State.DecisionsOf(field))
                .Distinct()
                .OrderBy(decision => decision.Ordinal),
        ];
        observations.Add(
            new Observation
            {
                Group = pin.Port,
                Subject = pin.Name,
                Certainty = certainty,
                Level = context.LevelOf(certainty),
                Cause = Cause.LastOf(Enabling(point.State, pull, switches, decisions), context.Result),
                Point = point,
                Flow = decisions,
                Pin = pin,
                Condition = pull,
            }
        );
    }

    private static bool Excludes(Condition a, Condition b) =>
        a.Alternatives.All(ways =>
            b.Alternatives.All(others => ways.Any(way => others.Any(other => Differ(way, other))))
        );

    private static bool Differ(FieldCondition a, FieldCondition b) =>
        ReferenceEquals(a.Field.Register, b.Field.Register)
        && a.Field.LowBit == b.Field.LowBit
        && a.Field.WidthBits == b.Field.WidthBits
        && !a.Values.Overlaps(b.Values);

    // The direction bits decide, too, but what enables the pull is what another condition of the pin does not look at.
    private static IEnumerable<Decision> Enabling(
        StateAtPoint state,
        Condition pull,
        PinSwitches switches,
        ImmutableArray<Decision> all
    )
    {
        var setting = pull
            .Alternatives.SelectMany(alternative => alternative)
            .Where(part => !switches.SelectMode(part.Field))
            .Where(part => !part.Values.Contains(0UL) && state.Evaluate(part) != Tristate.No)
            .SelectMany(part => state.DecisionsOf(part.Field))
            .ToArray();
        return setting.Length > 0 ? setting : all;
    }

    private static string Message(RuleContext context, ObservationGroup group)
    {
        var first = group.First;
        var isUp = ReferenceEquals(first.Condition, first.Pin!.PullUp);
        var count = group.Observations.Length;
        var byBoard =
            context.Board.Pins.GetValueOrDefault(first.Pin.Name) is { Pull: not null } or { Driven: not null };
        var who = byBoard ? "the board" : "the program itself";
        var switches = new PinSwitches(context.Device);
        var registers = Wording.Registers(
            first.Point.State,
            group
                .Observations.SelectMany(observation => observation.Condition!.Fields)
                .Where(field => !switches.SelectMode(field))
        );
        return $"The internal {(isUp ? "pull-up" : "pull-down")} of {Wording.List(group.Subjects)} works against {who}, which holds {Wording.Number(count, "the pin", "the pins")} {(isUp ? "low" : "high")} "
            + $"{Wording.Where(first.Point)} ({registers}): supply over pull resistance flows all the time. Switch the pull off."
            + Wording.Doubt(first.Certainty, first.Point);
    }
}
