using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>
/// Reads conditions: a mapping of bits to values, all of which must hold; a list of mappings, any of which must;
/// <c>always</c> or <c>never</c>.
/// </summary>
internal static class ConditionReader
{
    public static Condition Read(DeviceNode? node, ModelReading reading)
    {
        switch (node)
        {
            case null or ScalarNode { Text: "never" }:
                return Condition.Never;
            case ScalarNode { Text: "always" }:
                return Condition.Always;
            case MapNode map:
                return new Condition([ReadAll(map, reading)]);
            case ListNode list:
                return new Condition([.. Alternatives(list, reading)]);
            default:
                reading.Errors.Add(
                    node,
                    "a condition is a mapping of bits to values, a list of those, 'always' or 'never'"
                );
                return Condition.Never;
        }
    }

    /// <summary>Bits with one value each, to be written in order.</summary>
    public static ImmutableArray<FieldCondition> ReadWrites(DeviceNode? node, ModelReading reading)
    {
        if (node is null)
        {
            return [];
        }

        if (node is not MapNode map)
        {
            reading.Errors.Add(node, "what to write is a mapping of bits to values");
            return [];
        }

        var writes = ReadAll(map, reading);
        if (writes.Any(write => write.Values.Length != 1))
        {
            reading.Errors.Add(node, "what to write has one value for each of its bits");
        }

        return writes;
    }

    private static IEnumerable<ImmutableArray<FieldCondition>> Alternatives(ListNode list, ModelReading reading)
    {
        foreach (var item in list.Items)
        {
            if (item is MapNode map)
            {
                yield return ReadAll(map, reading);
            }
            else
            {
                reading.Errors.Add(item, "each alternative of a condition is a mapping of bits to values");
            }
        }
    }

    private static ImmutableArray<FieldCondition> ReadAll(MapNode map, ModelReading reading)
    {
        var parts = ImmutableArray.CreateBuilder<FieldCondition>(map.Entries.Count);
        foreach (var (key, value) in map.Entries)
        {
            var field = FieldReferences.Read(key, reading);
            if (field is not null)
            {
                parts.Add(new FieldCondition(field, ReadValues(value, field, reading)));
            }
        }

        return parts.ToImmutable();
    }

    private static ValueSet ReadValues(DeviceNode node, FieldReference field, ModelReading reading)
    {
        var largest = field.Mask >> field.LowBit;
        var values = new List<ValueRange>();
        foreach (var scalar in MapReader.ScalarsOf(node, $"the value of {field.Name}", reading.Errors))
        {
            if (!Numbers.TryParseRange(scalar.Text, out var first, out var last) || last < first)
            {
                reading.Errors.Add(
                    scalar,
                    $"'{scalar.Text}' is no value for {field.Name}: write a number or a range such as 1..3"
                );
            }
            else if (last > largest)
            {
                reading.Errors.Add(scalar, $"{last} does not fit into {field.Name}, which has {field.WidthBits} bits");
            }
            else
            {
                values.Add(new ValueRange(first, last));
            }
        }

        return ValueSet.Of(values);
    }
}
