using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>An open clock gate of a peripheral that the program never uses.</summary>
internal sealed class PeripheralClockLeftOn : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        var observations = new List<Observation>();
        foreach (var gate in context.Device.Gates.Where(gate => !IsInUse(context, gate)))
        {
            var unused = gate.Peripherals.Where(name => IsUnused(context, name)).ToArray();
            foreach (var name in unused)
            {
                var found = context
                    .Rests.Select(point => Observe(context, gate, name, point))
                    .OfType<Observation>()
                    .ToArray();
                observations.AddRange(found);
                if (found.Length == 0 && context.Rests.Count > 0)
                {
                    context.Clean(name);
                }
            }
        }

        context.Report(observations, group => Message(context, group), group => MendOf(context, group));
    }

    // A gate may stand before several peripherals: one in use keeps it open.
    private static bool IsInUse(RuleContext context, ClockGate gate) =>
        context.Device.Peripherals.Any(peripheral =>
            (
                gate.Peripherals.Contains(peripheral.Name, StringComparer.Ordinal)
                || (gate.LosesWrites && peripheral.Registers.Any(gate.Registers.Contains))
            ) && context.Result.Uses(peripheral)
        );

    private static bool IsUnused(RuleContext context, string name) =>
        context.Device.Peripherals.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.Ordinal))
            is { } peripheral
        && !context.Result.Uses(peripheral);

    private static Observation? Observe(RuleContext context, ClockGate gate, string name, PointFacts point)
    {
        if (point.CertaintyOf(point.State.Evaluate(gate.Open)) is not { } certainty)
        {
            return null;
        }

        var decisions = point.State.DecisionsOf(gate.Open);
        var level = context.LevelOf(certainty);
        return new Observation
        {
            // Gates of one register are closed by one write.
            Group = gate.Open.Fields.First().Register.Name,
            Subject = name,
            Certainty = certainty,
            Level = decisions.IsEmpty ? level.AtMostNote() : level,
            Cause = Cause.LastOf(decisions, context.Result),
            Point = point,
            Flow = decisions,
            Condition = gate.Open,
        };
    }

    private static Mend? MendOf(RuleContext context, ObservationGroup group)
    {
        var writes = ImmutableArray.CreateBuilder<FieldCondition>();
        foreach (var observation in group.Observations)
        {
            if (Opposites.Of(observation.Point.State, observation.Condition!, _ => true) is not { } close)
            {
                return null;
            }

            // Peripherals may share a gate.
            writes.AddRange(close.Where(write => !writes.Any(other => other.Field == write.Field)));
        }

        return new Mend
        {
            Description =
                $"Close the {Wording.Number(group.Observations.Length, "gate", "gates")} of {Wording.List(group.Subjects)}",
            Writes = writes.ToImmutable(),
            Place = MendPlace.AfterCause,
            Cause = group.First.Cause,
            Points = [.. group.Points.Select(point => point.Point)],
            IsSafe = true,
            Because = "The program never touches a register of what stands still then.",
        };
    }

    private static string Message(RuleContext context, ObservationGroup group)
    {
        var first = group.First;
        var count = group.Observations.Length;
        var registers = Wording.Registers(first.Point.State, group.Observations.SelectMany(o => o.Condition!.Fields));
        var clocked = group.Observations.Any(observation => IsClocked(context, observation))
            ? $"{Wording.Number(count, "gets its clock", "get their clocks")} {Wording.Where(first.Point)} ({registers})"
            : $"{Wording.Number(count, "is", "are")} clocked whenever the CPU runs, for {Wording.Number(count, "its gate is", "their gates are")} open ({registers})";
        return $"{Wording.List(group.Subjects)} {clocked}, "
            + $"but the program never uses {Wording.Number(count, "it", "them")}. Close the {Wording.Number(count, "gate", "gates")} at start-up."
            + Wording.Doubt(first.Certainty, first.Point);
    }

    // Deep modes stop clocks before the gates: there an open one costs only while the part is awake.
    private static bool IsClocked(RuleContext context, Observation observation) =>
        !observation.Point.Sleeps
        || context
            .Device.Peripherals.Where(peripheral =>
                string.Equals(peripheral.Name, observation.Subject, StringComparison.Ordinal)
            )
            .Any(peripheral => observation.Point.InMode(peripheral.DrawsIn) != Tristate.No);
}
