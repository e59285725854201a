using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>Reads how long sleep modes take to end.</summary>
internal sealed class WakeUpReader(MapNode document, ModelReading reading)
{
    private const string Section = "wake-up-times";

    /// <param name="oscillators">Names of the oscillators, whose pulses may be counted.</param>
    public ImmutableArray<WakeUpTime> Read(IReadOnlyCollection<string> oscillators)
    {
        if (document[Section] is not { } node)
        {
            return [];
        }

        if (node is not ListNode list)
        {
            reading.Errors.Add(node, $"'{Section}' is a list of rows");
            return [];
        }

        // What can never be, as a part lacks the switch, is not told.
        var rows = list
            .Items.Select(item => ReadRow(item, oscillators))
            .Where(row => !row.When.IsNever)
            .ToImmutableArray();
        foreach (
            var mode in reading.Modes.Where(mode => !rows.Any(row => row.Modes.Contains(mode, StringComparer.Ordinal)))
        )
        {
            reading.Errors.Add(node, $"no row of '{Section}' says how long mode {mode} takes to end");
        }

        return rows;
    }

    private WakeUpTime ReadRow(DeviceNode item, IReadOnlyCollection<string> oscillators)
    {
        var entry = MapReader.Of(item, $"a row of '{Section}'", reading.Errors);
        var modes = entry.Need("modes") is { } named ? reading.ReadModes(named) : [];
        var when = entry.Take("when") is { } condition ? ConditionReader.Read(condition, reading) : Condition.Always;
        var cycles = ReadCycles(entry.Take("clock-cycles"), oscillators);
        var typical = entry.Real("typical-microseconds");
        var maximum = entry.Real("maximum-microseconds");
        if (entry.Node["clock-cycles"] is null && typical is null && maximum is null)
        {
            reading.Errors.Add(
                item,
                $"a row of '{Section}' needs 'clock-cycles', 'typical-microseconds' or 'maximum-microseconds'"
            );
        }

        if (typical > maximum)
        {
            reading.Errors.Add(item, $"a row of '{Section}' has a typical time above the maximum");
        }

        var row = new WakeUpTime(
            modes,
            when,
            cycles,
            typical,
            maximum,
            entry.Real("typical-nanocoulombs"),
            entry.Real("volts"),
            reading.ReadSource(entry)
        );
        entry.Finish();
        return row;
    }

    /// <summary>A number of CPU cycles, or a mapping of clocks to numbers.</summary>
    private ImmutableArray<ClockCycles> ReadCycles(DeviceNode? node, IReadOnlyCollection<string> oscillators)
    {
        switch (node)
        {
            case null:
                return [];
            case ScalarNode scalar when Numbers.TryParseReal(scalar.Text, out var count) && count >= 0:
                return [new ClockCycles(null, null, count)];
            case MapNode map:
                return
                [
                    .. map
                        .Entries.Select(entry => ReadClock(entry.Key, entry.Value, oscillators))
                        .OfType<ClockCycles>(),
                ];
            default:
                reading.Errors.Add(
                    node,
                    "'clock-cycles' is a number of CPU cycles, or a mapping of clocks to numbers: { main: 6, cpu: 4 }"
                );
                return [];
        }
    }

    private ClockCycles? ReadClock(ScalarNode clock, DeviceNode value, IReadOnlyCollection<string> oscillators)
    {
        if (value is not ScalarNode number || !Numbers.TryParseReal(number.Text, out var count) || count < 0)
        {
            reading.Errors.Add(value, $"the cycles of '{clock.Text}' must be a number");
            return null;
        }

        if (clock.Text is "cpu")
        {
            return new ClockCycles(null, null, count);
        }

        if (oscillators.Contains(clock.Text, StringComparer.Ordinal))
        {
            return new ClockCycles(clock.Text, null, count);
        }

        if (Numbers.TryParseReal(clock.Text, out var hertz) && hertz > 0)
        {
            return new ClockCycles(null, hertz, count);
        }

        reading.Errors.Add(
            clock,
            $"'{clock.Text}' is no clock: write 'cpu', hertz or an oscillator{NearestNames.Hint(clock.Text, oscillators)}"
        );
        return null;
    }
}
