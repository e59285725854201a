using FsCheck.Xunit;
using PowerLint.Analysis;
using PowerLint.Program;

namespace PowerLint.Tests.Analysis;

/// <summary>
/// Every operator on abstract integers holds all results of the concrete operator: exhaustively at four bits, at random at
/// the widths that targets have. The concrete side is C# arithmetic, reduced modulo the width (C11 6.2.5, 6.5).
/// </summary>
public sealed class IntegerOperatorTests
{
    private const int SmallBits = 4;

    public static TheoryData<BinaryOperator, bool> Operators()
    {
        var data = new TheoryData<BinaryOperator, bool>();
        foreach (var @operator in Enum.GetValues<BinaryOperator>())
        {
            data.Add(@operator, false);
            data.Add(@operator, true);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Operators))]
    public void Four_bit_operators_hold_every_concrete_result(BinaryOperator @operator, bool isSigned)
    {
        var values = SmallValues();
        foreach (var a in values)
        {
            foreach (var b in values)
            {
                CheckAll(@operator, a, b, isSigned);
            }
        }
    }

    [Property(MaxTest = 400)]
    public void Wide_operators_hold_concrete_results(ulong x, ulong y, ulong knownX, ulong knownY, byte shape)
    {
        foreach (var bits in new[] { 8, 16, 32, 64 })
        {
            var a = Around(x, knownX, bits, shape & 3);
            var b = Around(y, knownY, bits, (shape >> 2) & 3);
            foreach (var @operator in Enum.GetValues<BinaryOperator>())
            {
                CheckOne(@operator, a, b, x & a.Mask, y & b.Mask, isSigned: (shape & 16) != 0);
            }
        }
    }

    [Property(MaxTest = 400)]
    public void Conversions_hold_concrete_results(ulong x, ulong known, byte shape)
    {
        foreach (var from in new[] { 8, 16, 32, 64 })
        {
            foreach (var to in new[] { 1, 8, 16, 32, 64 })
            {
                foreach (var isSigned in new[] { false, true })
                {
                    var a = Around(x, known, from, shape & 3);
                    var concrete = x & a.Mask;
                    var expected =
                        to == 1 ? (concrete != 0 ? 1UL : 0)
                        : isSigned ? (ulong)((long)(concrete << (64 - from)) >> (64 - from))
                        : concrete;
                    Assert.True(IntegerArithmetic.Convert(a, to, isSigned).MayBe(expected));
                }
            }
        }
    }

    [Property(MaxTest = 400)]
    public void Refinement_keeps_every_value_that_passes_the_test(
        ulong x,
        ulong y,
        ulong knownX,
        ulong knownY,
        byte shape
    )
    {
        foreach (var bits in new[] { 8, 16, 32, 64 })
        {
            var a = Around(x, knownX, bits, shape & 3);
            var b = Around(y, knownY, bits, (shape >> 2) & 3);
            foreach (var @operator in Enum.GetValues<BinaryOperator>().Where(IntegerComparison.IsComparison))
            {
                foreach (var isSigned in new[] { false, true })
                {
                    if (IntegerComparison.Concrete(@operator, x & a.Mask, y & b.Mask, bits, isSigned))
                    {
                        Assert.True(IntegerComparison.Refine(@operator, a, b, isSigned)?.MayBe(x));
                    }
                }
            }
        }
    }

    [Fact]
    public void Four_bit_refinement_drops_only_values_that_fail_the_test()
    {
        var values = SmallValues();
        foreach (var @operator in Enum.GetValues<BinaryOperator>().Where(IntegerComparison.IsComparison))
        {
            foreach (var a in values)
            {
                foreach (var b in values)
                {
                    foreach (var isSigned in new[] { false, true })
                    {
                        var refined = IntegerComparison.Refine(@operator, a, b, isSigned);
                        foreach (var x in All(a))
                        {
                            var passes = All(b)
                                .Any(y => IntegerComparison.Concrete(@operator, x, y, SmallBits, isSigned));
                            if (passes && refined?.MayBe(x) != true)
                            {
                                Assert.Fail($"{a} {@operator} {b}: {x}");
                            }
                        }
                    }
                }
            }
        }
    }

    private static void CheckAll(BinaryOperator @operator, IntegerValue a, IntegerValue b, bool isSigned)
    {
        var check = Checker(@operator, a, b, isSigned);
        foreach (var x in All(a))
        {
            foreach (var y in All(b))
            {
                check(x, y);
            }
        }
    }

    private static void CheckOne(
        BinaryOperator @operator,
        IntegerValue a,
        IntegerValue b,
        ulong x,
        ulong y,
        bool isSigned
    ) => Checker(@operator, a, b, isSigned)(x, y);

    private static Action<ulong, ulong> Checker(BinaryOperator @operator, IntegerValue a, IntegerValue b, bool isSigned)
    {
        if (IntegerComparison.IsComparison(@operator))
        {
            var truth = IntegerComparison.Compare(@operator, a, b, isSigned);
            return (x, y) =>
            {
                var holds = IntegerComparison.Concrete(@operator, x, y, a.Bits, isSigned);
                if (truth != Tristate.Maybe && truth != (holds ? Tristate.Yes : Tristate.No))
                {
                    Assert.Fail($"{a} {@operator} {b} is {truth}, but not for {x} and {y}");
                }
            };
        }

        var result = IntegerArithmetic.Apply(@operator, a, b, isSigned);
        return (x, y) =>
        {
            if (Expected(@operator, x, y, a.Bits, isSigned) is { } expected && !result.MayBe(expected))
            {
                Assert.Fail($"{a} {@operator} {b} = {result}, but {x} and {y} give {expected}");
            }
        };
    }

    // Written apart from the product's own concrete operator, in 128 bits.
    private static ulong? Expected(BinaryOperator @operator, ulong x, ulong y, int bits, bool isSigned)
    {
        Int128 a = isSigned ? (long)(x << (64 - bits)) >> (64 - bits) : x;
        Int128 b = isSigned ? (long)(y << (64 - bits)) >> (64 - bits) : y;
        Int128? result = @operator switch
        {
            BinaryOperator.Add => a + b,
            BinaryOperator.Subtract => a - b,
            BinaryOperator.Multiply => unchecked(a * b),
            BinaryOperator.And => a & b,
            BinaryOperator.Or => a | b,
            BinaryOperator.Xor => a ^ b,
            BinaryOperator.ShiftLeft => y < (ulong)bits ? a << (int)y : null,
            BinaryOperator.ShiftRight => y < (ulong)bits ? a >> (int)y : null,
            BinaryOperator.Divide => b == 0 ? null : a / b,
            _ => b == 0 ? null : a % b,
        };
        return result is { } value ? (ulong)value & (bits == 64 ? ulong.MaxValue : (1UL << bits) - 1) : null;
    }

    private static IEnumerable<ulong> All(IntegerValue value) =>
        Enumerable.Range(0, 1 << SmallBits).Select(n => (ulong)n).Where(value.MayBe);

    // All tristate numbers of four bits, and all intervals: 81 + 136 shapes, most of them exact sets by then.
    internal static List<IntegerValue> SmallValues()
    {
        var values = new List<IntegerValue>();
        for (ulong known = 0; known < 16; known++)
        {
            for (ulong value = 0; value < 16; value++)
            {
                if ((value & ~known) == 0)
                {
                    values.Add(IntegerValue.Reduce(SmallBits, known, value, 0, 15)!);
                }
            }
        }

        for (ulong low = 0; low < 16; low += 3)
        {
            for (var high = low; high < 16; high += 2)
            {
                values.Add(IntegerValue.Reduce(SmallBits, 0, 0, low, high)!);
            }
        }

        return values;
    }

    // An abstract value that holds x: exact, by known bits, by an interval, or by both.
    internal static IntegerValue Around(ulong x, ulong known, int bits, int shape)
    {
        var mask = IntegerValue.MaskOf(bits);
        x &= mask;
        var (low, high) = (Math.Min(x, x & known), Math.Max(x, x | (known & mask)));
        return shape switch
        {
            0 => IntegerValue.Constant(bits, x),
            1 => IntegerValue.Reduce(bits, known, x & known, 0, mask)!,
            2 => IntegerValue.Reduce(bits, 0, 0, low, high)!,
            _ => IntegerValue.Reduce(bits, known, x & known, low, high)!,
        };
    }
}
