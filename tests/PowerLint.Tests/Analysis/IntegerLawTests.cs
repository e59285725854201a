using FsCheck.Xunit;
using PowerLint.Analysis;

namespace PowerLint.Tests.Analysis;

/// <summary>The laws that <see cref="AbstractValue"/> states: joins and widenings are upper bounds, meets are exact, chains end.</summary>
public sealed class IntegerLawTests
{
    [Fact]
    public void Four_bit_joins_and_widenings_hold_both_sides_and_meets_hold_what_is_common()
    {
        var values = IntegerOperatorTests.SmallValues();
        foreach (var a in values)
        {
            foreach (var b in values)
            {
                var join = IntegerValue.Join(a, b);
                var widened = IntegerValue.Widen(a, b);
                var meet = IntegerValue.Meet(a, b);
                Assert.True(
                    IntegerValue.IsIncluded(a, join) && IntegerValue.IsIncluded(b, join),
                    $"{a} ⊔ {b} = {join}"
                );
                Assert.True(IntegerValue.IsIncluded(a, widened) && IntegerValue.IsIncluded(b, widened), $"{a} ∇ {b}");
                for (ulong x = 0; x < 16; x++)
                {
                    Assert.True(!(a.MayBe(x) && b.MayBe(x)) || meet?.MayBe(x) == true, $"{a} ⊓ {b} lost {x}");
                }
            }
        }
    }

    [Fact]
    public void Inclusion_of_four_bit_values_is_inclusion_of_their_sets()
    {
        var values = IntegerOperatorTests.SmallValues();
        foreach (var a in values)
        {
            foreach (var b in values)
            {
                var isSubset = Enumerable.Range(0, 16).All(x => !a.MayBe((ulong)x) || b.MayBe((ulong)x));
                Assert.Equal(isSubset, IntegerValue.IsIncluded(a, b));
            }
        }
    }

    [Property(MaxTest = 300)]
    public void Joins_of_wide_values_hold_both_sides(ulong x, ulong y, ulong knownX, ulong knownY, byte shape)
    {
        foreach (var bits in new[] { 8, 16, 32, 64 })
        {
            var a = IntegerOperatorTests.Around(x, knownX, bits, shape & 3);
            var b = IntegerOperatorTests.Around(y, knownY, bits, (shape >> 2) & 3);
            foreach (
                var upper in new[]
                {
                    IntegerValue.Join(a, b),
                    IntegerValue.Join(b, a),
                    IntegerValue.Widen(a, b),
                    IntegerValue.WidenFar(a, b),
                }
            )
            {
                Assert.True(upper.MayBe(x) && upper.MayBe(y));
                Assert.True(IntegerValue.IsIncluded(a, upper) && IntegerValue.IsIncluded(b, upper));
            }
        }
    }

    [Property(MaxTest = 100)]
    public void A_widening_chain_ends(ulong seed, ulong step)
    {
        foreach (var bits in new[] { 8, 16, 32, 64 })
        {
            var current = IntegerValue.Constant(bits, seed);
            var rounds = 0;
            for (var next = seed; rounds < 1000; next += step | 1)
            {
                var widened = IntegerValue.Widen(
                    current,
                    IntegerValue.Join(current, IntegerValue.Constant(bits, next))
                );
                if (!IntegerValue.IsIncluded(widened, current))
                {
                    rounds = 0;
                    current = widened;
                    Assert.True(Changes++ < 100_000);
                }

                rounds++;
            }
        }
    }

    [Property(MaxTest = 100)]
    public void Bounds_that_are_widened_far_grow_a_few_times_at_most(ulong seed, ulong step)
    {
        foreach (var bits in new[] { 8, 16, 32, 64 })
        {
            var current = IntegerValue.Join(
                IntegerValue.Constant(bits, seed),
                IntegerValue.Constant(bits, seed + (step | 1))
            );
            var bounds = 0;
            for (var i = 2ul; i < 500; i++)
            {
                var widened = IntegerValue.WidenFar(
                    current,
                    IntegerValue.Join(current, IntegerValue.Constant(bits, seed + i * (step | 1)))
                );
                bounds += widened.Minimum < current.Minimum || widened.Maximum > current.Maximum ? 1 : 0;
                current = widened;
            }

            Assert.InRange(bounds, 0, 4);
        }
    }

    private int Changes { get; set; }
}
