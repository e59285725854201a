using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>
/// One way in which the time between two interrupts of a peripheral comes about: a clock is divided, and its pulses are counted.
/// </summary>
/// <param name="When">When it is this way.</param>
/// <param name="ClockHertz">The clock that is divided, in hertz; null for the CPU's.</param>
/// <param name="Dividers">What divides it, one after the other.</param>
/// <param name="Counts">Divided pulses in a period; 0 where <paramref name="Top"/> holds one less.</param>
/// <param name="Top">The fields that hold the last count, lowest first; empty where <paramref name="Counts"/> is fixed.</param>
public sealed record Period(
    Condition When,
    double? ClockHertz,
    ImmutableArray<Divider> Dividers,
    ulong Counts,
    ImmutableArray<FieldReference> Top
)
{
    /// <summary>The greatest number of counts that <see cref="Top"/> can ask for.</summary>
    public ulong MostCounts => Top.IsEmpty ? Counts : 1UL << Math.Min(62, Top.Sum(part => part.WidthBits));
}

/// <summary>What each value of a field divides a clock by; a value that is not listed stops or resets the clock, or is another way.</summary>
/// <param name="Field">The field.</param>
/// <param name="Factors">Divisors by value, ascending by value.</param>
public sealed record Divider(FieldReference Field, ImmutableArray<DividerFactor> Factors);

/// <summary>A value of a divider's field.</summary>
/// <param name="Value">The value.</param>
/// <param name="DividesBy">What it divides by.</param>
public sealed record DividerFactor(ulong Value, ulong DividesBy);
