using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>Answers conditions as they would be after some writes on top of a state.</summary>
internal sealed class StateAfter(StateAtPoint state, ImmutableArray<FieldCondition> writes)
{
    /// <summary>Whether a condition would hold.</summary>
    public Tristate Evaluate(Condition condition) =>
        condition
            .Alternatives.Select(alternative => alternative.Select(Evaluate).Aggregate(Tristate.Yes, Tristates.And))
            .Any();

    private Tristate Evaluate(FieldCondition part)
    {
        var bits = state.Read(part.Field.Register);
        foreach (var write in writes.Where(write => write.Field.Register == part.Field.Register))
        {
            var value = write.Values[0] << write.Field.LowBit;
            bits = new KnownBits(bits.Known | write.Field.Mask, (bits.Value & ~write.Field.Mask) | value);
        }

        var known = (bits.Known & part.Field.Mask) >> part.Field.LowBit;
        var held = (bits.Value & part.Field.Mask) >> part.Field.LowBit;
        var fits = part.Values.Matching(held, known, part.Field.Mask >> part.Field.LowBit);
        var unknown = part.Field.WidthBits - System.Numerics.BitOperations.PopCount(known);
        return fits == 0 ? Tristate.No
            : unknown < 63 && fits == 1UL << unknown ? Tristate.Yes
            : Tristate.Maybe;
    }
}

/// <summary>Turns conditions round.</summary>
internal static class Opposites
{
    /// <summary>
    /// Writes after which a condition cannot hold: one field of each alternative gets a value that the condition does not list.
    /// Null where there is none (an alternative that always holds, or a field of which every value counts).
    /// </summary>
    /// <param name="state">The state; what does not hold there needs no write.</param>
    /// <param name="condition">The condition.</param>
    /// <param name="mayWrite">Which fields may be written.</param>
    public static ImmutableArray<FieldCondition>? Of(
        StateAtPoint state,
        Condition condition,
        Func<FieldReference, bool> mayWrite
    )
    {
        var writes = ImmutableArray.CreateBuilder<FieldCondition>();
        foreach (var alternative in condition.Alternatives)
        {
            if (alternative.Any(part => state.Evaluate(part) == Tristate.No))
            {
                continue;
            }

            var write = alternative
                .Where(part => part.Field.Register.Kind != RegisterKind.Option && mayWrite(part.Field))
                .Select(Outside)
                .FirstOrDefault(found => found is not null);
            if (write is null)
            {
                return null;
            }

            if (!writes.Any(other => other.Field == write.Field && other.Values.SequenceEqual(write.Values)))
            {
                writes.Add(write);
            }
        }

        return writes.Count == 0 ? null : writes.ToImmutable();
    }

    /// <summary>Writes after which a condition holds: those of its first alternative that do not hold already.</summary>
    public static ImmutableArray<FieldCondition> Towards(StateAtPoint state, Condition condition) =>
        condition.Alternatives.IsEmpty
            ? []
            :
            [
                .. condition
                    .Alternatives[0]
                    .Where(part => state.Evaluate(part) != Tristate.Yes)
                    .Select(part => part with { Values = [part.Values[0]] }),
            ];

    // Zero switches off on nearly every part; where zero is what the condition asks for, the lowest other value does.
    private static FieldCondition? Outside(FieldCondition part)
    {
        var most = part.Field.WidthBits >= 16 ? 0xFFFFUL : (1UL << part.Field.WidthBits) - 1;
        for (var value = 0UL; value <= most; value++)
        {
            if (!part.Values.Contains(value))
            {
                return part with { Values = [value] };
            }
        }

        return null;
    }
}
