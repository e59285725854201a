using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>Which statement switches a peripheral on.</summary>
internal static class EnablingStatement
{
    /// <summary>
    /// The last write that decided that the peripheral is on; where reset leaves it on, the last one that enabled one of the
    /// interrupts in question; where there is none either, the first statement of <c>main</c>.
    /// </summary>
    public static Cause Of(
        RuleContext context,
        PointFacts point,
        Peripheral peripheral,
        IEnumerable<Interrupt> interrupts
    )
    {
        var switching = Enabling(point.State, peripheral.On);
        if (switching.IsEmpty)
        {
            switching =
            [
                .. interrupts
                    .SelectMany(interrupt => Enabling(point.State, interrupt.Enabled))
                    .Distinct()
                    .OrderBy(decision => decision.Ordinal),
            ];
        }

        return Cause.LastOf(switching, context.Result);
    }

    /// <summary>Writes after which a part of the condition could hold that is true now, by ordinal.</summary>
    public static ImmutableArray<Decision> Enabling(StateAtPoint state, Condition condition) =>
        [
            .. condition
                .Alternatives.Where(alternative => alternative.All(part => state.Evaluate(part) != Tristate.No))
                .SelectMany(alternative => alternative)
                .SelectMany(part => state.DecisionsOf(part.Field).Where(decision => Allows(decision, part)))
                .Distinct()
                .OrderBy(decision => decision.Ordinal),
        ];

    /// <summary>Whether a part of a condition can hold after a write.</summary>
    public static bool Allows(Decision decision, FieldCondition part)
    {
        var shift = part.Field.LowBit + (8 * ((long)part.Field.Register.Address - (long)decision.Address));
        if (shift is < 0 or > 63)
        {
            return true;
        }

        var mask = part.Field.Mask >> part.Field.LowBit;
        return part.Values.Matching(decision.After.Value >> (int)shift, decision.After.Known >> (int)shift, mask) > 0;
    }
}
