using PowerLint.Devices;

namespace PowerLint.Tests.Devices;

/// <summary>Sets of values are counted by their ranges; what comes out is held against counting one by one.</summary>
public sealed class ValueSetTests
{
    [Fact]
    public void Values_with_certain_bits_are_counted_as_one_by_one()
    {
        var random = new Random(20261125);
        for (var i = 0; i < 20_000; i++)
        {
            var mask = (1UL << random.Next(1, 9)) - 1;
            var ends = new[] { (ulong)random.NextInt64((long)mask + 1), (ulong)random.NextInt64((long)mask + 1) };
            var range = new ValueRange(ends.Min(), ends.Max());
            var (value, known) = ((ulong)random.NextInt64(256), (ulong)random.NextInt64(256));
            var expected = 0UL;
            for (var number = range.First; number <= range.Last; number++)
            {
                expected += ((number ^ value) & known & mask) == 0 ? 1UL : 0;
            }

            Assert.Equal(
                (range, value, known, expected),
                (range, value, known, ValueSet.Of([range]).Matching(value, known, mask))
            );
        }
    }

    [Fact]
    public void A_range_of_all_words_is_one_range()
    {
        var set = ValueSet.Of([new ValueRange(1, 0xFFFFFFFF)]);
        Assert.Single(set.Ranges);
        Assert.Equal(int.MaxValue, set.Length);
        Assert.Equal(0xFFFFFFFFUL, set.Matching(0, 0, 0xFFFFFFFF));
        Assert.Equal(1UL << 31, set.Matching(0x80000000, 0x80000000, 0xFFFFFFFF));
        Assert.Equal(0UL, set.Matching(0, 0xFFFFFFFF, 0xFFFFFFFF));
        Assert.True(set.Contains(0xFFFFFFFF));
        Assert.False(set.Contains(0));
    }

    [Fact]
    public void Values_keep_their_order_and_join_where_they_go_on()
    {
        ValueSet set = [4, 5, 6, 2, 0];
        Assert.Equal([new ValueRange(4, 6), new ValueRange(2, 2), new ValueRange(0, 0)], set.Ranges);
        Assert.Equal([4UL, 5, 6, 2, 0], set.ToArray());
        Assert.Equal((5, 4UL, 2UL), (set.Length, set[0], set[3]));
        Assert.True(Of(5, 2).IsSubsetOf(set));
        Assert.False(Of(5, 3).IsSubsetOf(set));
        Assert.True(set.Overlaps([3, 6]));
        Assert.False(set.Overlaps([1, 3, 7]));
    }

    private static ValueSet Of(params ulong[] values) => [.. values];
}
