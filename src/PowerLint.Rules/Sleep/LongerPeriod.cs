using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A longer period that a timer offers from the same clock, of which a whole number makes the time that is counted.</summary>
/// <param name="Pulses">The period in pulses of the clock.</param>
/// <param name="Wakes">How many of them make up that time.</param>
/// <param name="Writes">What to write.</param>
internal sealed record LongerPeriod(ulong Pulses, int Wakes, ImmutableArray<FieldCondition> Writes)
{
    /// <summary>The longest one in the way of counting that is in use, or else in another; null where the timer offers none.</summary>
    public static LongerPeriod? Of(Interrupt interrupt, PeriodLength period, int wakesPerWork)
    {
        var whole = period.Pulses * (ulong)wakesPerWork;

        // Another way of counting is another mode of the timer: only where the one in use has nothing to offer.
        return interrupt
            .Periods.Where(way => way.ClockHertz.Equals(period.ClockHertz))
            .SelectMany(
                _ => Enumerable.Range(1, wakesPerWork - 1).Where(wakes => whole % (ulong)wakes == 0),
                (way, wakes) => (Pulses: whole / (ulong)wakes, Wakes: wakes, Way: way)
            )
            .OrderBy(choice => !CountsAlike(choice.Way, period.Way))
            .ThenBy(choice => choice.Wakes)
            .Select(choice =>
                WritesFor(choice.Way, choice.Pulses, period.Way) is { } writes
                    ? new LongerPeriod(choice.Pulses, choice.Wakes, writes)
                    : null
            )
            .FirstOrDefault(longer => longer is not null);
    }

    private static bool CountsAlike(Period a, Period b) => a.Counts == b.Counts && a.Top.SequenceEqual(b.Top);

    // The smallest division that will do keeps the most exact count.
    private static ImmutableArray<FieldCondition>? WritesFor(Period way, ulong pulses, Period now)
    {
        foreach (var (divisor, factors) in Divisions(way.Dividers).OrderBy(division => division.Divisor))
        {
            if (pulses % divisor != 0)
            {
                continue;
            }

            var counts = pulses / divisor;
            if (way.Top.IsEmpty ? counts == way.Counts : counts <= way.MostCounts)
            {
                return [.. ModeWrites(way, now), .. factors, .. TopWrites(way, counts - 1)];
            }
        }

        return null;
    }

    private static IEnumerable<FieldCondition> ModeWrites(Period way, Period now) =>
        ReferenceEquals(way, now) || way.When.Alternatives is not [var first, ..]
            ? []
            : first.Where(part => part.Values.Length == 1 && !now.When.Alternatives.All(other => Holds(other, part)));

    private static bool Holds(ImmutableArray<FieldCondition> all, FieldCondition part) =>
        all.Any(other => other.Field == part.Field && other.Values.SequenceEqual(part.Values));

    private static IEnumerable<FieldCondition> TopWrites(Period way, ulong top)
    {
        foreach (var part in way.Top)
        {
            yield return new FieldCondition(part, [top & (part.Mask >> part.LowBit)]);
            top >>= part.WidthBits;
        }
    }

    private static IEnumerable<(ulong Divisor, ImmutableArray<FieldCondition> Factors)> Divisions(
        ImmutableArray<Divider> dividers
    )
    {
        IEnumerable<(ulong Divisor, ImmutableArray<FieldCondition> Factors)> all = [(1UL, [])];
        foreach (var divider in dividers)
        {
            all =
                from division in all
                from factor in divider.Factors
                select (
                    division.Divisor * factor.DividesBy,
                    division.Factors.Add(new FieldCondition(divider.Field, [factor.Value]))
                );
        }

        return all;
    }
}
