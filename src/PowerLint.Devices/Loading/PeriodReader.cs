using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>Reads how long the periods of a timer are, and of what.</summary>
internal static class PeriodReader
{
    /// <summary>Reads a list of clocks, each with its ways of counting; the first whose condition holds counts.</summary>
    public static ImmutableArray<Period> Read(DeviceNode? node, ModelReading reading)
    {
        var periods = ImmutableArray.CreateBuilder<Period>();
        foreach (var item in ItemsOf(node))
        {
            var entry = MapReader.Of(item, "a period", reading.Errors);
            var clock = ReadClock(entry, reading);
            var (divisor, dividers) = ReadDividers(entry.Take("divide-by"), reading);
            var when = ReadWhen(entry, reading);
            var ways = entry.Take("ways");
            if (ways is null)
            {
                periods.Add(ReadWay(entry, item, new Period(when, clock, dividers, divisor, []), reading));
            }

            foreach (var way in ItemsOf(ways))
            {
                var inner = MapReader.Of(way, "a way of counting", reading.Errors);
                var both = BothOf(when, ReadWhen(inner, reading));
                periods.Add(ReadWay(inner, way, new Period(both, clock, dividers, divisor, []), reading));
                inner.Finish();
            }

            entry.Finish();
        }

        return periods.ToImmutable();
    }

    private static IEnumerable<DeviceNode> ItemsOf(DeviceNode? node) =>
        node is ListNode list ? list.Items
        : node is null ? []
        : [node];

    private static Condition ReadWhen(MapReader entry, ModelReading reading) =>
        entry.Take("when") is { } when ? ConditionReader.Read(when, reading) : Condition.Always;

    private static Condition BothOf(Condition a, Condition b) =>
        ReferenceEquals(a, Condition.Always)
            ? b
            : new Condition([
                .. from one in a.Alternatives
                from other in b.Alternatives
                select (ImmutableArray<FieldCondition>)[.. one, .. other],
            ]);

    // The period that is known so far holds the fixed divisor as its counts.
    private static Period ReadWay(MapReader entry, DeviceNode at, Period period, ModelReading reading)
    {
        var counts = entry.Number("counts");
        ImmutableArray<FieldReference> top =
        [
            .. entry.Scalars("top").Select(scalar => FieldReferences.Read(scalar, reading)).OfType<FieldReference>(),
        ];
        if (!top.IsEmpty && (counts is not null || period.Counts != 1))
        {
            reading.Errors.Add(at, "a period with 'top' has neither 'counts' nor a fixed 'divide-by'");
        }

        return period with
        {
            Counts = top.IsEmpty ? (counts ?? 1) * period.Counts : 0,
            Top = top,
        };
    }

    private static double? ReadClock(MapReader entry, ModelReading reading)
    {
        if (entry.Need("clock") is not ScalarNode clock || clock.Text == "cpu")
        {
            return null;
        }

        if (Numbers.TryParse(clock.Text, out var hertz) && hertz > 0)
        {
            return hertz;
        }

        reading.Errors.Add(clock, $"'{clock.Text}' is no clock: write 'cpu' or hertz");
        return null;
    }

    private static (ulong Fixed, ImmutableArray<Divider> Dividers) ReadDividers(DeviceNode? node, ModelReading reading)
    {
        switch (node)
        {
            case null:
                return (1, []);
            case ScalarNode scalar when Numbers.TryParse(scalar.Text, out var divisor) && divisor > 0:
                return (divisor, []);
            case MapNode map:
                return (
                    1,
                    [.. map.Entries.Select(entry => ReadDivider(entry.Key, entry.Value, reading)).OfType<Divider>()]
                );
            default:
                reading.Errors.Add(
                    node,
                    "'divide-by' is a number, or a mapping of fields to what each value divides by: { CS: { 1: 1, 2: 8 } }"
                );
                return (1, []);
        }
    }

    private static Divider? ReadDivider(ScalarNode name, DeviceNode values, ModelReading reading)
    {
        if (FieldReferences.Read(name, reading) is not { } field)
        {
            return null;
        }

        var factors = new SortedDictionary<ulong, ulong>();
        foreach (var (key, value) in MapReader.Of(values, $"what {field.Name} divides by", reading.Errors).Node.Entries)
        {
            if (
                !Numbers.TryParse(key.Text, out var number)
                || number > field.Mask >> field.LowBit
                || value is not ScalarNode factor
                || !Numbers.TryParse(factor.Text, out var divisor)
                || divisor == 0
            )
            {
                reading.Errors.Add(key, $"'{key.Text}' wants a value of {field.Name} and what it divides by, above 0");
            }
            else
            {
                factors[number] = divisor;
            }
        }

        return new Divider(field, [.. factors.Select(factor => new DividerFactor(factor.Key, factor.Value))]);
    }
}
