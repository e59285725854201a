using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A detector that options switch on and that runs on in sleep, although the program could stop it there.</summary>
internal sealed class BrownOutAlwaysOn : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var detector in context.Device.Peripherals.Where(IsDetector))
        {
            var observations = context
                .Points.Where(point => point.Sleeps)
                .Select(point => Observe(context, detector, point))
                .OfType<Observation>()
                .ToArray();
            if (observations.Length == 0 && context.Points.Any(point => point.Sleeps))
            {
                context.Clean(detector.Name);
            }

            context.Report(observations, group => Message(detector, group));
        }
    }

    // What only fuses or options switch on guards the supply, too; the program's say is over the sleep modes.
    private static bool IsDetector(Peripheral peripheral) =>
        peripheral.GuardsSupply
        || (
            peripheral.On.Fields.Any() && peripheral.On.Fields.All(field => field.Register.Kind == RegisterKind.Option)
        );

    private static Observation? Observe(RuleContext context, Peripheral detector, PointFacts point)
    {
        var controlled = detector
            .DrawsIn.Where(entry =>
                point.Modes.Any(mode => entry.Modes.Contains(mode.Mode.Name, StringComparer.Ordinal))
                && entry.When.Fields.Any(field => field.Register.Kind != RegisterKind.Option)
            )
            .ToArray();
        if (
            controlled.Length == 0
            || point.CertaintyOf(point.IsOn(detector).And(point.InMode([.. controlled]))) is not { } certainty
        )
        {
            return null;
        }

        return new Observation
        {
            Group = detector.Name,
            Subject = detector.Name,
            Certainty = certainty,
            Level = Level.Note,
            Cause = Cause.Of(point.Point),
            Point = point,
            Flow = [.. controlled.SelectMany(entry => point.State.DecisionsOf(entry.When)).Distinct()],
            Condition = controlled[0].When,
        };
    }

    private static string Message(Peripheral detector, ObservationGroup group)
    {
        var first = group.First;
        return $"The brown-out detector {detector.Name} runs all the time {Wording.Where(first.Point)} ({Wording.Fields(first.Point.State, first.Condition!)}), "
            + "although the part lets the program stop it or sample with it there. "
            + "Weigh it: an unguarded supply dip can corrupt non-volatile memory."
            + Wording.Doubt(first.Certainty, first.Point);
    }
}
