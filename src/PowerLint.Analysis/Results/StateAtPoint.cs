using System.Collections.Immutable;
using PowerLint.Devices;

namespace PowerLint.Analysis;

/// <summary>The registers at a point: what each bit can be, and which writes decided it.</summary>
public abstract class StateAtPoint
{
    /// <summary>The bits of a field, shifted down to bit 0.</summary>
    public abstract KnownBits Read(FieldReference field);

    /// <summary>The whole register.</summary>
    public abstract KnownBits Read(Register register);

    /// <summary>Writes that decided the bits of a field, by ordinal; empty where only reset did.</summary>
    public abstract ImmutableArray<Decision> DecisionsOf(FieldReference field);

    /// <summary>Bytes outside the model's registers that the program wrote by absolute address, by address.</summary>
    public abstract ImmutableArray<(ulong Address, KnownBits Bits)> UnmodelledBytes { get; }

    /// <summary>Functions without a body, and other unknown effects, that ran on some way here; they lower certainty.</summary>
    public abstract ImmutableArray<string> UnknownCallees { get; }

    /// <summary>Whether a condition holds.</summary>
    public Tristate Evaluate(Condition condition)
    {
        ArgumentNullException.ThrowIfNull(condition);
        var anyMaybe = false;
        foreach (var alternative in condition.Alternatives)
        {
            var all = Tristate.Yes;
            foreach (var part in alternative)
            {
                var holds = Evaluate(part);
                if (holds == Tristate.No)
                {
                    all = Tristate.No;
                    break;
                }

                if (holds == Tristate.Maybe)
                {
                    all = Tristate.Maybe;
                }
            }

            if (all == Tristate.Yes)
            {
                return Tristate.Yes;
            }

            anyMaybe |= all == Tristate.Maybe;
        }

        return anyMaybe ? Tristate.Maybe : Tristate.No;
    }

    /// <summary>Whether a field holds one of some values.</summary>
    public Tristate Evaluate(FieldCondition condition)
    {
        ArgumentNullException.ThrowIfNull(condition);
        var bits = Read(condition.Field);
        var mask = condition.Field.Mask >> condition.Field.LowBit;
        var possible = condition.Values.Matching(bits.Value, bits.Known, mask);
        if (possible == 0)
        {
            return Tristate.No;
        }

        // Every value that the unknown bits allow is listed: the field cannot escape the condition.
        var unknown = System.Numerics.BitOperations.PopCount(mask & ~bits.Known);
        return unknown < 63 && possible == 1UL << unknown ? Tristate.Yes : Tristate.Maybe;
    }

    /// <summary>Writes that decided the fields that a condition looks at, by ordinal.</summary>
    public ImmutableArray<Decision> DecisionsOf(Condition condition)
    {
        ArgumentNullException.ThrowIfNull(condition);
        return
        [
            .. condition
                .Fields.SelectMany(field => DecisionsOf(field))
                .Distinct()
                .OrderBy(decision => decision.Ordinal),
        ];
    }
}
