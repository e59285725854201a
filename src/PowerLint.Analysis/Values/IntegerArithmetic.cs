using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>
/// The operators on abstract integers. Known bits follow the tristate-number algorithms of Vishwanathan, Shachnai, Narayana and
/// Nagarakatte, "Sound, Precise, and Fast Abstract Interpretation with Tristate Numbers" (CGO 2022).
/// </summary>
internal static class IntegerArithmetic
{
    // Pairs of exact values beyond this are not worth the time: the result would rarely stay exact.
    private const int MaximumPairs = 256;

    /// <summary>Applies an arithmetic or bitwise operator, in the left operand's width.</summary>
    public static IntegerValue Apply(BinaryOperator @operator, IntegerValue a, IntegerValue b, bool isSigned)
    {
        if (a.IsConstant && b.IsConstant)
        {
            return Concrete(@operator, a.Minimum, b.Minimum, a.Bits, b.Bits, isSigned) is { } value
                ? IntegerValue.Constant(a.Bits, value).WithOrigin(OriginOf(@operator, a, b))
                : IntegerValue.Unknown(a.Bits);
        }

        return (Pairwise(@operator, a, b, isSigned) ?? General(@operator, a, b, isSigned)).WithOrigin(
            OriginOf(@operator, a, b)
        );
    }

    /// <summary>The concrete operation; null where C or the target leaves the result open.</summary>
    public static ulong? Concrete(BinaryOperator @operator, ulong x, ulong y, int bits, int rightBits, bool isSigned)
    {
        var mask = IntegerValue.MaskOf(bits);
        switch (@operator)
        {
            case BinaryOperator.Add:
                return (x + y) & mask;
            case BinaryOperator.Subtract:
                return (x - y) & mask;
            case BinaryOperator.Multiply:
                return (x * y) & mask;
            case BinaryOperator.And:
                return x & y;
            case BinaryOperator.Or:
                return x | y;
            case BinaryOperator.Xor:
                return x ^ y;
            case BinaryOperator.ShiftLeft:
                return y < (ulong)bits ? (x << (int)y) & mask : null;
            case BinaryOperator.ShiftRight:
                return y >= (ulong)bits ? null
                    : isSigned ? (ulong)(SignExtend(x, bits) >> (int)y) & mask
                    : x >> (int)y;
            case BinaryOperator.Divide or BinaryOperator.Remainder when y == 0:
                return null;
            case BinaryOperator.Divide when isSigned:
                var (dividend, divisor) = (SignExtend(x, bits), SignExtend(y, bits));
                return divisor == -1 ? (ulong)(-dividend) & mask : (ulong)(dividend / divisor) & mask;
            case BinaryOperator.Divide:
                return x / y;
            case BinaryOperator.Remainder when isSigned:
                return SignExtend(y, bits) == -1 ? 0 : (ulong)(SignExtend(x, bits) % SignExtend(y, bits)) & mask;
            case BinaryOperator.Remainder:
                return x % y;
            default:
                throw new ArgumentOutOfRangeException(nameof(@operator), @operator, "Not an arithmetic operator.");
        }
    }

    public static long SignExtend(ulong value, int bits) => (long)(value << (64 - bits)) >> (64 - bits);

    public static IntegerValue Negate(IntegerValue a) =>
        Apply(BinaryOperator.Subtract, IntegerValue.Constant(a.Bits, 0), a, isSigned: false);

    public static IntegerValue Complement(IntegerValue a) =>
        Apply(BinaryOperator.Xor, a, IntegerValue.Constant(a.Bits, a.Mask), isSigned: false);

    /// <summary>The low bits, as a bit-field or a byte of a word has them; one bit is a bit, not a truth.</summary>
    public static IntegerValue LowBits(IntegerValue a, int bits) =>
        bits >= a.Bits ? a : ConvertWidth(a, bits, extendSign: false);

    /// <summary>Converts to another width; a boolean target asks whether the value is not zero.</summary>
    public static IntegerValue Convert(IntegerValue a, int bits, bool sourceIsSigned)
    {
        if (bits == a.Bits)
        {
            return a;
        }

        if (bits == 1)
        {
            return a.IsTrue switch
            {
                Tristate.Yes => IntegerValue.Constant(1, 1),
                Tristate.No => IntegerValue.Constant(1, 0),
                _ => IntegerValue.Unknown(1),
            };
        }

        var origin = a.Origin is { } o ? o with { Mask = o.Mask & IntegerValue.MaskOf(bits) } : null;
        return ConvertWidth(a, bits, sourceIsSigned && bits > a.Bits).WithOrigin(origin);
    }

    private static IntegerValue ConvertWidth(IntegerValue a, int bits, bool extendSign)
    {
        if (a.Exact is not null)
        {
            Span<ulong> values = stackalloc ulong[a.Exact.Length];
            for (var i = 0; i < values.Length; i++)
            {
                values[i] = extendSign ? (ulong)SignExtend(a.Exact[i], a.Bits) : a.Exact[i];
            }

            return IntegerValue.FromValues(bits, values);
        }

        var mask = IntegerValue.MaskOf(bits);
        if (bits < a.Bits)
        {
            var fits = a.Maximum <= mask;
            return IntegerValue.Reduce(bits, a.Known, a.Value & mask, fits ? a.Minimum : 0, fits ? a.Maximum : mask)!;
        }

        var upper = mask & ~a.Mask;
        if (!extendSign || a.Maximum < a.SignBit)
        {
            return IntegerValue.Reduce(bits, a.Known | upper, a.Value, a.Minimum, a.Maximum)!;
        }

        return a.Minimum >= a.SignBit
            ? IntegerValue.Reduce(bits, a.Known | upper, a.Value | upper, a.Minimum | upper, a.Maximum | upper)!
            : IntegerValue.Reduce(bits, a.Known, a.Value, 0, mask)!;
    }

    private static IntegerValue? Pairwise(BinaryOperator @operator, IntegerValue a, IntegerValue b, bool isSigned)
    {
        if (a.Exact is null || b.Exact is null || a.Exact.Length * b.Exact.Length > MaximumPairs)
        {
            return null;
        }

        Span<ulong> results = stackalloc ulong[a.Exact.Length * b.Exact.Length];
        var count = 0;
        foreach (var x in a.Exact)
        {
            foreach (var y in b.Exact)
            {
                if (Concrete(@operator, x, y, a.Bits, b.Bits, isSigned) is not { } result)
                {
                    return null;
                }

                results[count++] = result;
            }
        }

        return IntegerValue.FromValues(a.Bits, results);
    }

    private static IntegerValue General(BinaryOperator @operator, IntegerValue a, IntegerValue b, bool isSigned)
    {
        var bits = a.Bits;
        var mask = a.Mask;
        switch (@operator)
        {
            case BinaryOperator.Add:
            {
                var bitsOf = TristateArithmetic.Add(a.KnownBits, b.KnownBits);
                var (low, high) = ((UInt128)a.Minimum + b.Minimum, (UInt128)a.Maximum + b.Maximum);
                var wrapsAlike = low > mask == high > mask;
                return Make(bits, bitsOf, wrapsAlike ? (ulong)low & mask : 0, wrapsAlike ? (ulong)high & mask : mask);
            }

            case BinaryOperator.Subtract:
            {
                var bitsOf = TristateArithmetic.Subtract(a.KnownBits, b.KnownBits);
                var wrapsAlike = a.Minimum >= b.Maximum || a.Maximum < b.Minimum;
                return Make(
                    bits,
                    bitsOf,
                    wrapsAlike ? (a.Minimum - b.Maximum) & mask : 0,
                    wrapsAlike ? (a.Maximum - b.Minimum) & mask : mask
                );
            }

            case BinaryOperator.Multiply:
            {
                var bitsOf = TristateArithmetic.Multiply(a.KnownBits, b.KnownBits);
                var fits = (UInt128)a.Maximum * b.Maximum <= mask;
                return Make(bits, bitsOf, fits ? a.Minimum * b.Minimum : 0, fits ? a.Maximum * b.Maximum : mask);
            }

            case BinaryOperator.And:
                return Make(bits, TristateArithmetic.And(a.KnownBits, b.KnownBits), 0, Math.Min(a.Maximum, b.Maximum));
            case BinaryOperator.Or:
                return Make(
                    bits,
                    TristateArithmetic.Or(a.KnownBits, b.KnownBits),
                    Math.Max(a.Minimum, b.Minimum),
                    mask
                );
            case BinaryOperator.Xor:
                return Make(bits, TristateArithmetic.Xor(a.KnownBits, b.KnownBits), 0, mask);
            case BinaryOperator.ShiftLeft or BinaryOperator.ShiftRight:
                return Shift(@operator, a, b, isSigned);
            case BinaryOperator.Divide or BinaryOperator.Remainder:
                return Quotient(@operator, a, b, isSigned);
            default:
                throw new ArgumentOutOfRangeException(nameof(@operator), @operator, "Not an arithmetic operator.");
        }
    }

    private static IntegerValue Make(int bits, KnownBits knownBits, ulong minimum, ulong maximum) =>
        IntegerValue.Reduce(bits, knownBits.Known, knownBits.Value, minimum, maximum)
        ?? throw new InvalidOperationException("The known bits and the interval of a result contradict each other.");

    private static IntegerValue Shift(BinaryOperator @operator, IntegerValue a, IntegerValue amount, bool isSigned)
    {
        if (amount.Exact is null)
        {
            return @operator == BinaryOperator.ShiftRight && !isSigned
                ? IntegerValue.Reduce(a.Bits, 0, 0, 0, a.Maximum)!
                : IntegerValue.Unknown(a.Bits);
        }

        IntegerValue? result = null;
        foreach (var count in amount.Exact)
        {
            var shifted =
                count >= (ulong)a.Bits ? IntegerValue.Unknown(a.Bits) : ShiftBy(@operator, a, (int)count, isSigned);
            result = result is null ? shifted : IntegerValue.Join(result, shifted);
        }

        return result!;
    }

    private static IntegerValue ShiftBy(BinaryOperator @operator, IntegerValue a, int count, bool isSigned)
    {
        var mask = a.Mask;
        if (@operator == BinaryOperator.ShiftLeft)
        {
            var fits = a.Maximum <= mask >> count;
            return IntegerValue.Reduce(
                a.Bits,
                (a.Known << count) | IntegerValue.MaskOf(count),
                (a.Value << count) & mask,
                fits ? a.Minimum << count : 0,
                fits ? a.Maximum << count : mask
            )!;
        }

        if (!isSigned || a.Maximum < a.SignBit)
        {
            var entering = mask & ~(mask >> count);
            return IntegerValue.Reduce(
                a.Bits,
                (a.Known >> count) | entering,
                a.Value >> count,
                a.Minimum >> count,
                a.Maximum >> count
            )!;
        }

        var wide = ConvertWidth(a, 64, extendSign: a.Bits < 64);
        var known = (ulong)((long)wide.Known >> count);
        return IntegerValue.Reduce(a.Bits, known & mask, (ulong)((long)wide.Value >> count) & known & mask, 0, mask)!;
    }

    private static IntegerValue Quotient(BinaryOperator @operator, IntegerValue a, IntegerValue b, bool isSigned)
    {
        var isNonNegative = !isSigned || (a.Maximum < a.SignBit && b.Maximum < b.SignBit);
        if (b.Minimum == 0 || !isNonNegative)
        {
            return IntegerValue.Unknown(a.Bits);
        }

        if (@operator == BinaryOperator.Divide)
        {
            return IntegerValue.Reduce(a.Bits, 0, 0, a.Minimum / b.Maximum, a.Maximum / b.Minimum)!;
        }

        if (b.IsConstant && ulong.IsPow2(b.Minimum))
        {
            return Apply(BinaryOperator.And, a, IntegerValue.Constant(a.Bits, b.Minimum - 1), isSigned: false);
        }

        return a.Maximum < b.Minimum ? a : IntegerValue.Reduce(a.Bits, 0, 0, 0, Math.Min(a.Maximum, b.Maximum - 1))!;
    }

    // Which bits of the result still stand as they were read from a register.
    private static RegisterOrigin? OriginOf(BinaryOperator @operator, IntegerValue a, IntegerValue b)
    {
        if (a.Origin is null == b.Origin is null)
        {
            return null;
        }

        var (source, other) = a.Origin is not null ? (a.Origin, b) : (b.Origin!, a);
        var kept = @operator switch
        {
            BinaryOperator.And => other.Value,
            BinaryOperator.Or or BinaryOperator.Xor => other.Known & ~other.Value,
            BinaryOperator.Add => other is { IsConstant: true, Minimum: 0 } ? ulong.MaxValue : 0,
            BinaryOperator.Subtract when a.Origin is not null => other is { IsConstant: true, Minimum: 0 }
                ? ulong.MaxValue
                : 0,
            _ => 0UL,
        };
        return source with { Mask = source.Mask & kept };
    }
}
