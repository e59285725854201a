using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>Reads regulators.</summary>
internal sealed class RegulatorReader(MapNode document, ModelReading reading)
{
    public ImmutableArray<Regulator> Read(IReadOnlyCollection<string> consumers)
    {
        var regulators = ImmutableArray.CreateBuilder<Regulator>();
        foreach (var (name, value) in reading.Section(document, "regulators"))
        {
            var entry = MapReader.Of(value, $"regulator {name.Text}", reading.Errors);
            regulators.Add(
                new Regulator(
                    name.Text,
                    reading.ReadModesWhen(entry.Need("modes")),
                    ConditionReader.Read(entry.Need("low-power"), reading),
                    [.. NeededBy(entry, name.Text, consumers)],
                    entry.Text("board-needs")
                )
            );
            entry.Finish();
        }

        return regulators.ToImmutable();
    }

    // Names alone need it whenever they run; a mapping says under which condition each does.
    private IEnumerable<RegulatorConsumer> NeededBy(
        MapReader entry,
        string regulator,
        IReadOnlyCollection<string> consumers
    )
    {
        if (entry.Take("needed-by") is not { } node)
        {
            yield break;
        }

        var pairs = node is MapNode map
            ? map.Entries.Select(pair => (pair.Key, When: ConditionReader.Read(pair.Value, reading)))
            : MapReader
                .ScalarsOf(node, $"'needed-by' of regulator {regulator}", reading.Errors)
                .Select(scalar => (Key: scalar, When: Condition.Always));
        foreach (var (name, when) in pairs)
        {
            if (!consumers.Contains(name.Text, StringComparer.Ordinal))
            {
                reading.Errors.Add(
                    name,
                    $"regulator {regulator} is needed by '{name.Text}', which is no peripheral and no oscillator{NearestNames.Hint(name.Text, consumers)}"
                );
            }

            yield return new RegulatorConsumer(name.Text, when);
        }
    }
}
