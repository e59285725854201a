using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>Comparisons of abstract integers, and what their outcome says of the operands.</summary>
internal static class IntegerComparison
{
    private const int MaximumPairs = 256;

    public static bool IsComparison(BinaryOperator @operator) => @operator >= BinaryOperator.Equal;

    public static BinaryOperator Negate(BinaryOperator @operator) =>
        @operator switch
        {
            BinaryOperator.Equal => BinaryOperator.NotEqual,
            BinaryOperator.NotEqual => BinaryOperator.Equal,
            BinaryOperator.Less => BinaryOperator.GreaterOrEqual,
            BinaryOperator.LessOrEqual => BinaryOperator.Greater,
            BinaryOperator.Greater => BinaryOperator.LessOrEqual,
            BinaryOperator.GreaterOrEqual => BinaryOperator.Less,
            _ => throw new ArgumentOutOfRangeException(nameof(@operator), @operator, "Not a comparison."),
        };

    /// <summary>The operator with its operands exchanged.</summary>
    public static BinaryOperator Swap(BinaryOperator @operator) =>
        @operator switch
        {
            BinaryOperator.Less => BinaryOperator.Greater,
            BinaryOperator.LessOrEqual => BinaryOperator.GreaterOrEqual,
            BinaryOperator.Greater => BinaryOperator.Less,
            BinaryOperator.GreaterOrEqual => BinaryOperator.LessOrEqual,
            _ => @operator,
        };

    public static bool Concrete(BinaryOperator @operator, ulong x, ulong y, int bits, bool isSigned)
    {
        // Flipping the sign bit maps signed order onto unsigned order.
        var flip = isSigned ? 1UL << (bits - 1) : 0;
        x ^= flip;
        y ^= flip;
        return @operator switch
        {
            BinaryOperator.Equal => x == y,
            BinaryOperator.NotEqual => x != y,
            BinaryOperator.Less => x < y,
            BinaryOperator.LessOrEqual => x <= y,
            BinaryOperator.Greater => x > y,
            _ => x >= y,
        };
    }

    public static Tristate Compare(BinaryOperator @operator, IntegerValue a, IntegerValue b, bool isSigned)
    {
        if (a.Exact is not null && b.Exact is not null && a.Exact.Length * b.Exact.Length <= MaximumPairs)
        {
            var (anyTrue, anyFalse) = (false, false);
            foreach (var x in a.Exact)
            {
                foreach (var y in b.Exact)
                {
                    var holds = Concrete(@operator, x, y, a.Bits, isSigned);
                    anyTrue |= holds;
                    anyFalse |= !holds;
                }
            }

            return From(anyTrue, anyFalse);
        }

        switch (@operator)
        {
            case BinaryOperator.Equal:
                return IntegerValue.Meet(a, b) is null ? Tristate.No : Tristate.Maybe;
            case BinaryOperator.NotEqual:
                return IntegerValue.Meet(a, b) is null ? Tristate.Yes : Tristate.Maybe;
            case BinaryOperator.Greater or BinaryOperator.GreaterOrEqual:
                return Compare(Swap(@operator), b, a, isSigned);
        }

        var (lowA, highA) = Bounds(a, isSigned);
        var (lowB, highB) = Bounds(b, isSigned);
        return @operator == BinaryOperator.Less ? From(lowA < highB, highA >= lowB) : From(lowA <= highB, highA > lowB);
    }

    /// <summary>The values of <paramref name="a"/> for which the comparison can hold; null where there are none.</summary>
    public static IntegerValue? Refine(BinaryOperator @operator, IntegerValue a, IntegerValue b, bool isSigned)
    {
        if (a.Exact is not null)
        {
            return a.Where(value =>
                Compare(@operator, IntegerValue.Constant(a.Bits, value), b, isSigned) != Tristate.No
            );
        }

        switch (@operator)
        {
            case BinaryOperator.Equal:
                return IntegerValue.Meet(a, b);
            case BinaryOperator.NotEqual:
                return !b.IsConstant ? a
                    : b.Minimum == a.Minimum ? IntegerValue.Reduce(a.Bits, a.Known, a.Value, a.Minimum + 1, a.Maximum)
                    : b.Minimum == a.Maximum ? IntegerValue.Reduce(a.Bits, a.Known, a.Value, a.Minimum, a.Maximum - 1)
                    : a;
        }

        if (isSigned)
        {
            // Bounds in signed order are an interval in unsigned order only where they do not cross the sign.
            var (low, high) = Bounds(b, isSigned: true);
            return (@operator is BinaryOperator.Greater or BinaryOperator.GreaterOrEqual) && low >= 0
                    ? Within(a, (UInt128)low + (@operator == BinaryOperator.Greater ? 1u : 0u), a.SignBit - 1)
                : (@operator is BinaryOperator.Less or BinaryOperator.LessOrEqual)
                && high <= 0
                && !(high == 0 && @operator == BinaryOperator.LessOrEqual)
                    ? Within(a, a.SignBit, (ulong)(long)(high - (@operator == BinaryOperator.Less ? 1 : 0)) & a.Mask)
                : a.Maximum < a.SignBit && b.Maximum < b.SignBit ? Refine(@operator, a, b, isSigned: false)
                : a;
        }

        return @operator switch
        {
            BinaryOperator.Less => b.Maximum == 0 ? null : Within(a, 0, b.Maximum - 1),
            BinaryOperator.LessOrEqual => Within(a, 0, b.Maximum),
            BinaryOperator.Greater => Within(a, (UInt128)b.Minimum + 1, a.Mask),
            _ => Within(a, b.Minimum, a.Mask),
        };
    }

    private static IntegerValue? Within(IntegerValue a, UInt128 minimum, ulong maximum) =>
        minimum > a.Mask
            ? null
            : IntegerValue
                .Reduce(a.Bits, a.Known, a.Value, Math.Max(a.Minimum, (ulong)minimum), Math.Min(a.Maximum, maximum))
                ?.WithOrigin(a.Origin);

    private static (Int128 Low, Int128 High) Bounds(IntegerValue a, bool isSigned)
    {
        if (!isSigned || a.Maximum < a.SignBit)
        {
            return (a.Minimum, a.Maximum);
        }

        return a.Minimum >= a.SignBit
            ? (IntegerArithmetic.SignExtend(a.Minimum, a.Bits), IntegerArithmetic.SignExtend(a.Maximum, a.Bits))
            : (-(Int128)a.SignBit, (Int128)a.SignBit - 1);
    }

    private static Tristate From(bool mayBeTrue, bool mayBeFalse) =>
        mayBeTrue == mayBeFalse ? Tristate.Maybe
        : mayBeTrue ? Tristate.Yes
        : Tristate.No;
}
