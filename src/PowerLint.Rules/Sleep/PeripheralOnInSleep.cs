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

            context.Report(observations, group => Message(peripheral, group));
        }
    }

    // What only fuses or options switch on is a decision of the product's, a brown-out detector for example, and has a rule of
    // its own.
    private static bool IsSwitchedByProgram(Peripheral peripheral) =>
        peripheral.On.Fields.Any(field => field.Register.Kind != RegisterKind.Option);

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
