using System.Collections.Immutable;
using System.Globalization;

namespace PowerLint.Devices;

/// <summary>A field that must hold one of some values.</summary>
/// <param name="Field">The field.</param>
/// <param name="Values">The values, any of which will do.</param>
public sealed record FieldCondition(FieldReference Field, ValueSet Values)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Field} = {string.Join('/', Runs())}";

    // 0/2/4..7: what follows one upon another is told by its ends.
    private IEnumerable<string> Runs() =>
        Values.Ranges.SelectMany(range =>
            range.Last - range.First < 2
                ? new ValueSet([range]).Select(value => value.ToString(CultureInfo.InvariantCulture))
                : [string.Create(CultureInfo.InvariantCulture, $"{range.First}..{range.Last}")]
        );
}

/// <summary>
/// A condition on the register state: holds where any of the alternatives holds, an alternative where all of its parts hold.
/// No alternatives: never. One empty alternative: always.
/// </summary>
/// <param name="Alternatives">The alternatives.</param>
public sealed record Condition(ImmutableArray<ImmutableArray<FieldCondition>> Alternatives)
{
    /// <summary>Holds in no state.</summary>
    public static Condition Never { get; } = new(ImmutableArray<ImmutableArray<FieldCondition>>.Empty);

    /// <summary>Holds in every state.</summary>
    public static Condition Always { get; } = new([ImmutableArray<FieldCondition>.Empty]);

    /// <summary>Whether it can never hold.</summary>
    public bool IsNever => Alternatives.IsEmpty;

    /// <summary>All fields that it looks at, without duplicates, in order.</summary>
    public IEnumerable<FieldReference> Fields => Alternatives.SelectMany(a => a).Select(c => c.Field).Distinct();

    /// <inheritdoc/>
    public override string ToString() =>
        IsNever
            ? "never"
            : string.Join(" or ", Alternatives.Select(a => a.IsEmpty ? "always" : string.Join(" and ", a)));

    /// <inheritdoc/>
    public bool Equals(Condition? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}

/// <summary>Sleep modes in which something holds, where a condition holds too.</summary>
/// <param name="Modes">Names of <see cref="SleepMode"/>s.</param>
/// <param name="When">The further condition; <see cref="Condition.Always"/> where there is none.</param>
public sealed record ModesWhen(ImmutableArray<string> Modes, Condition When);
