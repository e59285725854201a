using System.Collections;
using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace PowerLint.Devices;

/// <summary>Values one upon another.</summary>
/// <param name="First">The first.</param>
/// <param name="Last">The last, which is not below the first.</param>
public readonly record struct ValueRange(ulong First, ulong Last);

/// <summary>
/// Values of a field, in the order in which a model gives them. What it gives as a range stays one, however long: <c>1..0xFFFFFFFF</c>
/// takes no more room than <c>1</c>.
/// </summary>
/// <param name="Ranges">The values, by ranges.</param>
[CollectionBuilder(typeof(ValueSet), nameof(Create))]
public readonly record struct ValueSet(ImmutableArray<ValueRange> Ranges) : IEnumerable<ulong>
{
    /// <summary>How many values there are; the largest number there is where there are more.</summary>
    public int Length
    {
        get
        {
            var length = 0UL;
            foreach (var range in Ranges)
            {
                var added = range.Last - range.First;
                if (added >= int.MaxValue || length + added >= int.MaxValue)
                {
                    return int.MaxValue;
                }

                length += added + 1;
            }

            return (int)length;
        }
    }

    /// <summary>The value at some place.</summary>
    /// <param name="index">The place, from 0.</param>
    public ulong this[int index]
    {
        get
        {
            var left = (ulong)index;
            foreach (var range in Ranges)
            {
                if (left <= range.Last - range.First)
                {
                    return range.First + left;
                }

                left -= range.Last - range.First + 1;
            }

            throw new ArgumentOutOfRangeException(nameof(index));
        }
    }

    /// <summary>The values of a collection expression.</summary>
    public static ValueSet Create(ReadOnlySpan<ulong> values)
    {
        var ranges = new List<ValueRange>(values.Length);
        foreach (var value in values)
        {
            Add(ranges, new ValueRange(value, value));
        }

        return new([.. ranges]);
    }

    /// <summary>The values of ranges; those that go on from one another become one.</summary>
    public static ValueSet Of(IEnumerable<ValueRange> ranges)
    {
        ArgumentNullException.ThrowIfNull(ranges);
        var joined = new List<ValueRange>();
        foreach (var range in ranges)
        {
            Add(joined, range);
        }

        return new([.. joined]);
    }

    /// <summary>Whether a value is among them.</summary>
    public bool Contains(ulong value)
    {
        foreach (var range in Ranges)
        {
            if (range.First <= value && value <= range.Last)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether they have a value in common with others.</summary>
    public bool Overlaps(ValueSet other) =>
        Ranges.Any(range => other.Ranges.Any(o => range.First <= o.Last && o.First <= range.Last));

    /// <summary>Whether all of them are among others.</summary>
    public bool IsSubsetOf(ValueSet other) =>
        Ranges.All(range =>
            other.Ranges.Any(o => o.First <= range.First && range.Last <= o.Last)
            || (range.Last - range.First < ushort.MaxValue && new ValueSet([range]).All(other.Contains))
        );

    /// <summary>Whether others are the same values in the same order.</summary>
    public bool SequenceEqual(ValueSet other) => Ranges.AsSpan().SequenceEqual(other.Ranges.AsSpan());

    /// <summary>How many of them have certain bits.</summary>
    /// <param name="value">What the known bits are.</param>
    /// <param name="known">Which bits are known.</param>
    /// <param name="mask">The bits that a value can have.</param>
    public ulong Matching(ulong value, ulong known, ulong mask)
    {
        var count = 0UL;
        foreach (var range in Ranges)
        {
            count += MatchingUpTo(range.Last, value, known & mask, mask);
            if (range.First > 0)
            {
                count -= MatchingUpTo(range.First - 1, value, known & mask, mask);
            }
        }

        return count;
    }

    /// <inheritdoc/>
    public IEnumerator<ulong> GetEnumerator()
    {
        foreach (var range in Ranges)
        {
            for (var value = range.First; ; value++)
            {
                yield return value;
                if (value == range.Last)
                {
                    break;
                }
            }
        }
    }

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private static void Add(List<ValueRange> ranges, ValueRange range)
    {
        if (ranges.Count > 0 && ranges[^1].Last != ulong.MaxValue && ranges[^1].Last + 1 == range.First)
        {
            ranges[^1] = ranges[^1] with { Last = range.Last };
        }
        else
        {
            ranges.Add(range);
        }
    }

    // Bit by bit from the highest: a 0 where the limit has a 1 leaves the bits below free.
    private static ulong MatchingUpTo(ulong limit, ulong value, ulong known, ulong mask)
    {
        if (limit > mask)
        {
            limit = mask;
        }

        var count = 0UL;
        for (var bit = 63 - BitOperations.LeadingZeroCount(mask); bit >= 0; bit--)
        {
            var one = 1UL << bit;
            var isKnown = (known & one) != 0;
            var isOne = (value & one) != 0;
            if ((limit & one) != 0 && !(isKnown && isOne))
            {
                count += 1UL << BitOperations.PopCount((one - 1) & ~known);
            }

            if (isKnown && isOne != ((limit & one) != 0))
            {
                return count;
            }
        }

        return count + 1;
    }
}
