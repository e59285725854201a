using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>Which statement selects an analog channel.</summary>
internal static class AnalogSelection
{
    /// <summary>
    /// The writes that selected the channel, by ordinal. The condition may have come true at another write (the converter was
    /// switched on after the channel was chosen): the choice is then the last earlier write to the selecting field.
    /// </summary>
    public static ImmutableArray<Decision> Decisions(RuleContext context, PointFacts point, PinFunction function)
    {
        var held = context.Result.DecisionsEverHeld(function.When);
        var selectors = SelectingFields(context.Device, function).ToArray();
        var direct = held.Where(decision => selectors.Any(field => Writes(decision, field))).ToImmutableArray();
        if (!direct.IsEmpty)
        {
            return direct;
        }

        var earlier = selectors
            .SelectMany(field => point.State.DecisionsOf(field).Where(decision => Selects(decision, field, function)))
            .Distinct()
            .OrderBy(decision => decision.Ordinal)
            .ToImmutableArray();
        return earlier.IsEmpty
            ? held.IsEmpty
                ? point.State.DecisionsOf(function.When)
                : held
            : earlier;
    }

    // The selecting field is the one in which this pin's function differs from its neighbours'.
    private static IEnumerable<FieldReference> SelectingFields(DeviceModel device, PinFunction function)
    {
        var others = device
            .Pins.SelectMany(pin => pin.Functions)
            .Where(other =>
                !ReferenceEquals(other, function)
                && other.Kind == function.Kind
                && string.Equals(other.Peripheral, function.Peripheral, StringComparison.Ordinal)
            )
            .SelectMany(other => Parts(other.When))
            .ToArray();
        return Parts(function.When)
            .Where(part =>
                !others.Any(other => other.Field == part.Field && other.Values.SequenceEqual(part.Values))
                || others.Any(other => other.Field == part.Field && !other.Values.SequenceEqual(part.Values))
            )
            .Select(part => part.Field)
            .Distinct();
    }

    private static IEnumerable<FieldCondition> Parts(Condition condition) =>
        condition.Alternatives.SelectMany(alternative => alternative);

    private static bool Writes(Decision decision, FieldReference field) =>
        decision.Address <= field.Register.Address + (ulong)(field.LowBit / 8)
        && field.Register.Address + (ulong)(field.LowBit / 8) < decision.Address + (ulong)(decision.WidthBits / 8);

    private static bool Selects(Decision decision, FieldReference field, PinFunction function)
    {
        var shift = field.LowBit - (int)(8 * (long)(decision.Address - field.Register.Address));
        if (shift is < 0 or > 63)
        {
            return true;
        }

        var mask = field.Mask >> field.LowBit;
        return Parts(function.When)
            .Where(part => part.Field == field)
            .Any(part => part.Values.Matching(decision.After.Value >> shift, decision.After.Known >> shift, mask) > 0);
    }
}
