using PowerLint.Rules;

namespace PowerLint.Tests;

/// <summary>Subjects are sorted as people count.</summary>
public sealed class SubjectOrderTests
{
    [Fact]
    public void Numbers_count_by_value()
    {
        string[] subjects = ["PA10", "PB0", "PA2", "P1.10", "P1.9", "PA"];

        var sorted = subjects.Order(SubjectOrder.Instance);

        Assert.Equal(new[] { "P1.9", "P1.10", "PA", "PA2", "PA10", "PB0" }, sorted.ToArray());
    }

    [Theory]
    [InlineData("PA2", "PA2", 0)]
    [InlineData("PA2", "PA10", -1)]
    [InlineData("TIMER10", "TIMER9", 1)]
    public void The_order_is_the_same_both_ways(string left, string right, int sign)
    {
        Assert.Equal(sign, Math.Sign(SubjectOrder.Instance.Compare(left, right)));
        Assert.Equal(-sign, Math.Sign(SubjectOrder.Instance.Compare(right, left)));
    }
}
