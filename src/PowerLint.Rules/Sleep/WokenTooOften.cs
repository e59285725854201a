using System.Collections.Immutable;
using System.Globalization;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A periodic wake source that wakes the part to count, although its timer could count by itself.</summary>
internal sealed class WokenTooOften : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        var excesses = new Dictionary<PointFacts, Excess>();
        var observations = new List<Observation>();
        foreach (var point in context.Points.Where(point => point.Sleeps))
        {
            if (
                ShortestOf(context, point) is not var (interrupt, period)
                || context.Result.PeriodicWakes.FirstOrDefault(w => w.Interrupt == interrupt) is not { } wake
            )
            {
                continue;
            }

            if (
                LongerPeriod.Of(interrupt, period, wake.WakesPerWork) is not { } longer
                || point.CertaintyOf(Tristate.Yes) is not { } certainty
            )
            {
                context.Clean(NameOf(interrupt));
                continue;
            }

            var decisions = DecisionsOf(
                point,
                [.. period.Way.Dividers.Select(divider => divider.Field), .. period.Way.Top]
            );
            if (decisions.IsEmpty)
            {
                // Nothing divides the clock: what makes the period is which of the timer's events interrupts.
                decisions = point.State.DecisionsOf(period.Way.When);
            }

            var sets = DecisionsOf(point, period.Way.Top);
            excesses.Add(point, new Excess(wake, period, longer));
            observations.Add(
                new Observation
                {
                    Group = interrupt.Name,
                    Subject = NameOf(interrupt),
                    Certainty = certainty,
                    Level = context.LevelOf(certainty),
                    Cause = Cause.LastOf(sets.IsEmpty ? decisions : sets, context.Result),
                    Point = point,
                    Flow = decisions,
                }
            );
        }

        context.Report(observations, group => Message(context, excesses[group.First.Point], group));
    }

    /// <summary>What is too often at a point, and what would do.</summary>
    private sealed record Excess(PeriodicWake Wake, PeriodLength Period, LongerPeriod Longer);

    private static string NameOf(Interrupt interrupt) => interrupt.Peripheral ?? interrupt.Name;

    private static (Interrupt Interrupt, PeriodLength Period)? ShortestOf(RuleContext context, PointFacts point)
    {
        var hertz = context.Result.CpuHertz;
        var sources = context
            .Device.Interrupts.Where(interrupt => interrupt.IsPeriodic && point.IsWakeSource(interrupt) != Tristate.No)
            .Select(interrupt => (Interrupt: interrupt, Period: PeriodLength.Of(interrupt, point.State)))
            .ToArray();

        // One whose period is not known may be the shortest.
        return sources.Length > 0 && Array.TrueForAll(sources, source => source.Period?.Seconds(hertz) is not null)
            ? sources
                .OrderBy(source => source.Period!.Seconds(hertz))
                .Select(source => ((Interrupt, PeriodLength)?)(source.Interrupt, source.Period!))
                .First()
            : null;
    }

    private static ImmutableArray<Decision> DecisionsOf(PointFacts point, ImmutableArray<FieldReference> fields) =>
        [.. fields.SelectMany(part => point.State.DecisionsOf(part)).Distinct().OrderBy(decision => decision.Ordinal)];

    private static string Message(RuleContext context, Excess excess, ObservationGroup group)
    {
        var ((interrupt, wakes), period, longer) = excess;
        var hertz = context.Result.CpuHertz;
        var every = Wording.Time(period.Seconds(hertz)!.Value);
        var basis = period.ClockHertz is null ? $" ({context.Result.CpuClockBasis})" : "";
        var writes = string.Join(", ", longer.Writes.Select(write => $"{write.Field.Name} = {write.Values[0]}"));
        var counted =
            longer.Wakes == 1
                ? "needs no counting then"
                : string.Create(CultureInfo.InvariantCulture, $"counts to {longer.Wakes} then");
        return $"{interrupt.Name} wakes the part every {every}{basis}, and {wakes - 1} of {wakes} times the program only counts and sleeps again. "
            + $"{NameOf(interrupt)} can count by itself: {writes} wakes every {Wording.Time(longer.Pulses / (period.ClockHertz ?? hertz)!.Value)}, and the program {counted}."
            + Wording.Doubt(group.First.Certainty, group.First.Point);
    }
}
