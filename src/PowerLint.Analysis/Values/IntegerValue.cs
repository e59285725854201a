using System.Numerics;

namespace PowerLint.Analysis;

/// <summary>
/// What an integer of some width can be: known bits and an unsigned interval, reduced against each other, or the exact values
/// where they are few. Bit patterns; signedness belongs to the operations. Never empty.
/// </summary>
internal sealed class IntegerValue : AbstractValue
{
    /// <summary>More values than this are kept as known bits and an interval: enough for a row of pins or a table of modes.</summary>
    public const int MaximumExactValues = 16;

    private static readonly IntegerValue?[] s_unknown = new IntegerValue?[65];
    private static readonly IntegerValue[][] s_small =
    [
        .. new[] { 1, 8, 16, 32, 64 }.Select(bits =>
            Enumerable
                .Range(0, bits == 1 ? 2 : 256)
                .Select(n => new IntegerValue(bits, MaskOf(bits), (ulong)n, (ulong)n, (ulong)n, [(ulong)n], null))
                .ToArray()
        ),
    ];

    private IntegerValue(
        int bits,
        ulong known,
        ulong value,
        ulong minimum,
        ulong maximum,
        ulong[]? exact,
        RegisterOrigin? origin
    )
    {
        Bits = bits;
        Known = known;
        Value = value;
        Minimum = minimum;
        Maximum = maximum;
        Exact = exact;
        Origin = origin;
    }

    /// <summary>Width, 1 to 64.</summary>
    public int Bits { get; }

    /// <summary>Bits that are known, within the width.</summary>
    public ulong Known { get; }

    /// <summary>Their values.</summary>
    public ulong Value { get; }

    /// <summary>Smallest value, unsigned.</summary>
    public ulong Minimum { get; }

    /// <summary>Largest value, unsigned.</summary>
    public ulong Maximum { get; }

    /// <summary>All values in ascending order where they are few, else null.</summary>
    public ulong[]? Exact { get; }

    /// <summary>The register that some of the bits were read from, unchanged since; or null.</summary>
    public RegisterOrigin? Origin { get; }

    public ulong Mask => MaskOf(Bits);

    public bool IsConstant => Minimum == Maximum;

    public ulong SignBit => 1UL << (Bits - 1);

    public KnownBits KnownBits => new(Known, Value);

    public override Tristate IsTrue =>
        Maximum == 0 ? Tristate.No
        : Minimum > 0 || Value != 0 ? Tristate.Yes
        : Tristate.Maybe;

    /// <summary>Whether two values stand for the same numbers, read from the same register.</summary>
    public static bool AreSame(IntegerValue a, IntegerValue b) =>
        a.Bits == b.Bits
        && a.Known == b.Known
        && a.Value == b.Value
        && a.Minimum == b.Minimum
        && a.Maximum == b.Maximum
        && Equals(a.Origin, b.Origin)
        && a.Exact.AsSpan().SequenceEqual(b.Exact);

    public static ulong MaskOf(int bits) => bits >= 64 ? ulong.MaxValue : (1UL << bits) - 1;

    public static IntegerValue Constant(int bits, ulong value)
    {
        value &= MaskOf(bits);
        if (value < 256)
        {
            var row = bits switch
            {
                1 => 0,
                8 => 1,
                16 => 2,
                32 => 3,
                64 => 4,
                _ => -1,
            };
            if (row >= 0)
            {
                return s_small[row][value];
            }
        }

        return new IntegerValue(bits, MaskOf(bits), value, value, value, [value], null);
    }

    public static IntegerValue Unknown(int bits) =>
        s_unknown[bits] ??=
            bits <= 4
                ? FromValues(bits, [.. Enumerable.Range(0, 1 << bits).Select(n => (ulong)n)])
                : new IntegerValue(bits, 0, 0, 0, MaskOf(bits), null, null);

    /// <summary>One of some values, given in any order.</summary>
    /// <exception cref="ArgumentException">There are none.</exception>
    public static IntegerValue FromValues(int bits, ReadOnlySpan<ulong> values)
    {
        if (values.IsEmpty)
        {
            throw new ArgumentException("An integer has at least one value.", nameof(values));
        }

        var mask = MaskOf(bits);
        var sorted = values.ToArray();
        for (var i = 0; i < sorted.Length; i++)
        {
            sorted[i] &= mask;
        }

        Array.Sort(sorted);
        var count = 1;
        for (var i = 1; i < sorted.Length; i++)
        {
            if (sorted[i] != sorted[count - 1])
            {
                sorted[count++] = sorted[i];
            }
        }

        if (count == 1)
        {
            return Constant(bits, sorted[0]);
        }

        Array.Resize(ref sorted, count);
        ulong ones = 0;
        var common = mask;
        foreach (var value in sorted)
        {
            ones |= value;
            common &= value;
        }

        var known = (common | ~ones) & mask;
        return count <= MaximumExactValues
            ? new IntegerValue(bits, known, common, sorted[0], sorted[^1], sorted, null)
            : Reduce(bits, known, common, sorted[0], sorted[^1])!;
    }

    /// <summary>The values that fit known bits and lie in an interval; null where there are none.</summary>
    public static IntegerValue? Reduce(int bits, ulong known, ulong value, ulong minimum, ulong maximum)
    {
        var mask = MaskOf(bits);
        known &= mask;
        value &= known;
        maximum = Math.Min(maximum, mask);
        while (true)
        {
            minimum = Math.Max(minimum, value);
            maximum = Math.Min(maximum, value | (mask & ~known));
            if (minimum > maximum)
            {
                return null;
            }

            // Bits above the highest difference of the bounds are the same in all values.
            var free = minimum == maximum ? 0 : MaskOf(64 - BitOperations.LeadingZeroCount(minimum ^ maximum));
            var prefix = mask & ~free;
            if (((minimum ^ value) & known & prefix) != 0)
            {
                return null;
            }

            if ((prefix & ~known) == 0)
            {
                break;
            }

            known |= prefix;
            value |= minimum & prefix;
        }

        if (minimum == maximum)
        {
            return Constant(bits, minimum);
        }

        var unknown = mask & ~known;
        if (maximum - minimum < MaximumExactValues || BitOperations.PopCount(unknown) <= 4)
        {
            return Enumerate(bits, known, value, minimum, maximum);
        }

        return new IntegerValue(bits, known, value, minimum, maximum, null, null);
    }

    private static IntegerValue? Enumerate(int bits, ulong known, ulong value, ulong minimum, ulong maximum)
    {
        Span<ulong> found = stackalloc ulong[MaximumExactValues];
        var count = 0;
        var unknown = MaskOf(bits) & ~known;
        if (BitOperations.PopCount(unknown) <= 4)
        {
            ulong subset = 0;
            do
            {
                var candidate = value | subset;
                if (candidate >= minimum && candidate <= maximum)
                {
                    found[count++] = candidate;
                }

                subset = (subset - unknown) & unknown;
            } while (subset != 0);
        }
        else
        {
            for (var offset = 0UL; offset <= maximum - minimum; offset++)
            {
                if ((((minimum + offset) ^ value) & known) == 0)
                {
                    found[count++] = minimum + offset;
                }
            }
        }

        return count == 0 ? null : FromValues(bits, found[..count]);
    }

    public IntegerValue WithOrigin(RegisterOrigin? origin) =>
        ReferenceEquals(origin, Origin) || (origin is { Mask: 0 } && Origin is null)
            ? this
            : new IntegerValue(Bits, Known, Value, Minimum, Maximum, Exact, origin is { Mask: 0 } ? null : origin);

    public bool MayBe(ulong value)
    {
        value &= Mask;
        return Exact is not null
            ? Array.BinarySearch(Exact, value) >= 0
            : value >= Minimum && value <= Maximum && ((value ^ Value) & Known) == 0;
    }

    public static IntegerValue Join(IntegerValue a, IntegerValue b)
    {
        if (ReferenceEquals(a, b))
        {
            return a;
        }

        if (a.Bits != b.Bits)
        {
            // Only unions and casts of function results bring this about; the wider view covers both.
            return Unknown(Math.Max(a.Bits, b.Bits));
        }

        var origin = Equals(a.Origin, b.Origin) ? a.Origin : null;
        if (a.Exact is not null && b.Exact is not null)
        {
            if (a.IsConstant && b.IsConstant && a.Minimum == b.Minimum)
            {
                return a.WithOrigin(origin);
            }

            Span<ulong> both = stackalloc ulong[a.Exact.Length + b.Exact.Length];
            a.Exact.CopyTo(both);
            b.Exact.CopyTo(both[a.Exact.Length..]);
            return FromValues(a.Bits, both).WithOrigin(origin);
        }

        return Hull(a, b).WithOrigin(origin);
    }

    private static IntegerValue Hull(IntegerValue a, IntegerValue b) =>
        Reduce(
            a.Bits,
            a.Known & b.Known & ~(a.Value ^ b.Value),
            a.Value & b.Value,
            Math.Min(a.Minimum, b.Minimum),
            Math.Max(a.Maximum, b.Maximum)
        )!;

    /// <summary>Bounds that grow jump to a power of two less one, so that a chain has at most as many steps as bits.</summary>
    public static IntegerValue Widen(IntegerValue before, IntegerValue after) => Widen(before, after, isFar: false);

    /// <summary>Bounds that grow jump to the type's own, so that a chain has a few steps, one more for low bits that were known.</summary>
    public static IntegerValue WidenFar(IntegerValue before, IntegerValue after) => Widen(before, after, isFar: true);

    private static IntegerValue Widen(IntegerValue before, IntegerValue after, bool isFar)
    {
        if (before.Bits != after.Bits || IsIncluded(after, before))
        {
            return IsIncluded(after, before) ? before : Join(before, after);
        }

        var hull = Hull(before, after);
        var minimum = hull.Minimum < before.Minimum ? 0 : before.Minimum;
        var grows = hull.Maximum > before.Maximum;
        var reached = MaskOf(64 - BitOperations.LeadingZeroCount(hull.Maximum));
        var maximum =
            !grows ? before.Maximum
            : isFar ? MaskOf(before.Bits)
            : reached;
        var known = grows && isFar ? hull.Known & reached : hull.Known;
        return Reduce(before.Bits, known & ~FreeBelow(maximum), hull.Value, minimum, maximum)!;

        // A counter that grows will change its low bits, too: known low bits of the first few values must not pin it.
        ulong FreeBelow(ulong bound) =>
            hull.Maximum > before.Maximum && before.Exact is not null
                ? bound & ~(before.Known & after.Known & ~(before.Value ^ after.Value))
                : 0;
    }

    public static bool IsIncluded(IntegerValue a, IntegerValue b)
    {
        if (ReferenceEquals(a, b))
        {
            return true;
        }

        if (a.Bits != b.Bits)
        {
            return false;
        }

        if (a.Exact is not null)
        {
            foreach (var value in a.Exact)
            {
                if (!b.MayBe(value))
                {
                    return false;
                }
            }

            return true;
        }

        return b.Exact is null
            && a.Minimum >= b.Minimum
            && a.Maximum <= b.Maximum
            && (b.Known & ~a.Known) == 0
            && ((a.Value ^ b.Value) & b.Known) == 0;
    }

    /// <summary>The values of both; null where there are none.</summary>
    public static IntegerValue? Meet(IntegerValue a, IntegerValue b)
    {
        if (a.Bits != b.Bits)
        {
            return a;
        }

        if (a.Exact is null && b.Exact is null)
        {
            return ((a.Value ^ b.Value) & a.Known & b.Known) != 0
                ? null
                : Reduce(
                    a.Bits,
                    a.Known | b.Known,
                    a.Value | b.Value,
                    Math.Max(a.Minimum, b.Minimum),
                    Math.Min(a.Maximum, b.Maximum)
                )
                    ?.WithOrigin(a.Origin);
        }

        return a.Exact is null ? b.Where(a.MayBe) : a.Where(b.MayBe)?.WithOrigin(a.Origin);
    }

    /// <summary>The exact values for which a predicate holds; null where there are none, unchanged where they are not exact.</summary>
    public IntegerValue? Where(Func<ulong, bool> holds)
    {
        if (Exact is null)
        {
            return this;
        }

        Span<ulong> kept = stackalloc ulong[Exact.Length];
        var count = 0;
        foreach (var value in Exact)
        {
            if (holds(value))
            {
                kept[count++] = value;
            }
        }

        return count == 0 ? null
            : count == Exact.Length ? this
            : FromValues(Bits, kept[..count]);
    }

    public override string ToString() =>
        Exact is not null
            ? $"u{Bits}{{{string.Join(',', Exact)}}}"
            : $"u{Bits}[{Minimum}..{Maximum}]&{Known:x}={Value:x}";
}

/// <summary>Bits that stand in a value just as they were read from a register: writing them back decides nothing.</summary>
/// <param name="Address">Byte address of the register's lowest byte.</param>
/// <param name="Bits">Width of the access.</param>
/// <param name="Mask">The bits that are still as they were read.</param>
internal sealed record RegisterOrigin(ulong Address, int Bits, ulong Mask);
