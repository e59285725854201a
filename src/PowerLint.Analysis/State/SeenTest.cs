using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace PowerLint.Analysis;

/// <summary>
/// A look at variables that handlers write, as it stands on the ways to a point: a test and the outcomes that lead there, or a
/// local that took a copy.
/// </summary>
/// <param name="Node">The condition; the local's region for a copy.</param>
/// <param name="Outcomes">A bit for each outcome that leads here: 1 for false, 2 for true; none for a copy.</param>
/// <param name="IsExposed">Whether one of those handlers could run since.</param>
/// <param name="CanFlip">Whether what a handler writes could have turned the outcome round.</param>
internal sealed record SeenTest(object Node, int Outcomes, Tristate IsExposed, bool CanFlip)
{
    /// <summary>It looked at a copy: what it decided counts until the next test.</summary>
    public bool IsOfCopy { get; init; }

    /// <summary>It stands on some of the ways only.</summary>
    public bool IsDoubtful { get; init; }

    public const int False = 1;
    public const int True = 2;
    public const int Both = False | True;
}

/// <summary>The tests on the ways to a point, a few at most.</summary>
internal static class SeenTests
{
    // More than one decision about sleeping makes; older ones are forgotten first.
    private const int Maximum = 12;

    /// <summary>A later look at the same thing replaces the earlier one.</summary>
    public static ImmutableArray<SeenTest> With(this ImmutableArray<SeenTest> tests, SeenTest test)
    {
        var kept = tests.Without(test.Node);
        return kept.Length >= Maximum ? [.. kept.Skip(1), test] : kept.Add(test);
    }

    public static ImmutableArray<SeenTest> Without(this ImmutableArray<SeenTest> tests, object node) =>
        tests.Any(test => ReferenceEquals(test.Node, node))
            ? tests.RemoveAll(test => ReferenceEquals(test.Node, node))
            : tests;

    public static SeenTest? Find(this ImmutableArray<SeenTest> tests, object node) =>
        tests.FirstOrDefault(test => ReferenceEquals(test.Node, node));

    /// <summary>The tests over two ways; one that stands on one way only is less certain.</summary>
    public static ImmutableArray<SeenTest> Join(ImmutableArray<SeenTest> a, ImmutableArray<SeenTest> b)
    {
        if (IsSame(a, b))
        {
            return a;
        }

        var joined = ImmutableArray.CreateBuilder<SeenTest>();
        foreach (var test in a)
        {
            joined.Add(b.Find(test.Node) is { } other ? Join(test, other) : Doubted(test));
        }

        joined.AddRange(b.Where(test => a.Find(test.Node) is null).Select(Doubted));
        return joined.Count > Maximum ? [.. joined.Skip(joined.Count - Maximum)] : joined.ToImmutable();
    }

    public static bool IsIncluded(ImmutableArray<SeenTest> a, ImmutableArray<SeenTest> b) =>
        IsSame(a, b)
        || a.All(test =>
            b.Find(test.Node) is { } other
            && (test.Outcomes & ~other.Outcomes) == 0
            && (test.IsExposed == other.IsExposed || other.IsExposed == Tristate.Maybe)
            && (!test.CanFlip || other.CanFlip)
            && (!test.IsDoubtful || other.IsDoubtful)
        );

    public static bool AreSame(ImmutableArray<SeenTest> a, ImmutableArray<SeenTest> b) =>
        IsSame(a, b) || a.SequenceEqual(b);

    private static bool IsSame(ImmutableArray<SeenTest> a, ImmutableArray<SeenTest> b) =>
        (a.IsEmpty && b.IsEmpty)
        || ReferenceEquals(ImmutableCollectionsMarshal.AsArray(a), ImmutableCollectionsMarshal.AsArray(b));

    private static SeenTest Join(SeenTest a, SeenTest b) =>
        a == b
            ? a
            : a with
            {
                Outcomes = a.Outcomes | b.Outcomes,
                IsExposed = a.IsExposed == b.IsExposed ? a.IsExposed : Tristate.Maybe,
                CanFlip = a.CanFlip || b.CanFlip,
                IsDoubtful = a.IsDoubtful || b.IsDoubtful,
            };

    private static SeenTest Doubted(SeenTest test) => test.IsDoubtful ? test : test with { IsDoubtful = true };
}

/// <summary>
/// The ways of a pass of the outermost loop that have come here without sleep and without work, by the tests that they passed.
/// </summary>
/// <param name="Tests">The tests with all their outcomes in this pass.</param>
/// <param name="IsDoubtful">Whether each of the ways hangs on other tests that were left open, too.</param>
internal sealed record IdlePass(ImmutableArray<SeenTest> Tests, bool IsDoubtful)
{
    public static IdlePass Fresh { get; } = new([], IsDoubtful: false);

    public IdlePass Doubted() => IsDoubtful ? this : this with { IsDoubtful = true };

    public IdlePass With(SeenTest test) =>
        this with
        {
            Tests = Tests.With(
                Tests.Find(test.Node) is { } before ? test with { Outcomes = test.Outcomes | before.Outcomes } : test
            ),
        };

    public static IdlePass? Join(IdlePass? a, IdlePass? b) =>
        a is null ? b
        : b is null || ReferenceEquals(a, b) ? a
        : new IdlePass(SeenTests.Join(a.Tests, b.Tests), a.IsDoubtful && b.IsDoubtful);

    public static bool IsIncluded(IdlePass? a, IdlePass? b) =>
        a is null || (b is not null && SeenTests.IsIncluded(a.Tests, b.Tests) && (a.IsDoubtful || !b.IsDoubtful));
}
