using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>Reads the datasheet's figures, each with its source.</summary>
internal sealed class FigureReader(MapNode document, ModelReading reading)
{
    public ImmutableArray<SupplyCurrentRow> ReadCurrents(ICollection<string> known)
    {
        var rows = ImmutableArray.CreateBuilder<SupplyCurrentRow>();
        foreach (var item in Rows("currents"))
        {
            var entry = MapReader.Of(item, "a row of 'currents'", reading.Errors);
            var mode = entry.NeedText("mode") ?? "active";
            if (mode is not "active" && !reading.Modes.Contains(mode, StringComparer.Ordinal))
            {
                reading.Errors.Add(item, $"unknown sleep mode '{mode}'{NearestNames.Hint(mode, reading.Modes)}");
            }

            foreach (var with in entry.Scalars("with"))
            {
                CheckName(with, known);
            }

            rows.Add(
                new SupplyCurrentRow(
                    mode,
                    entry.Text("clock"),
                    entry.Real("hertz"),
                    entry.NeedReal("volts"),
                    entry.NeedReal("typical-microamps"),
                    entry.Real("maximum-microamps"),
                    entry.Texts("with"),
                    reading.ReadSource(entry)
                )
            );
            entry.Finish();
        }

        return rows.ToImmutable();
    }

    public ImmutableArray<CurrentAdder> ReadAdders(ICollection<string> known)
    {
        var adders = ImmutableArray.CreateBuilder<CurrentAdder>();
        foreach (var item in Rows("adders"))
        {
            var entry = MapReader.Of(item, "a row of 'adders'", reading.Errors);
            if (entry.Need("name") is ScalarNode name)
            {
                CheckName(name, known);
            }

            adders.Add(
                new CurrentAdder(
                    entry.Text("name") ?? "",
                    entry.NeedReal("volts"),
                    entry.Real("hertz"),
                    entry.NeedReal("typical-microamps"),
                    reading.ReadSource(entry)
                )
            );
            entry.Finish();
        }

        return adders.ToImmutable();
    }

    public PinElectrics? ReadElectrics()
    {
        if (document["pin-electrics"] is not { } node)
        {
            return null;
        }

        var entry = MapReader.Of(node, "'pin-electrics'", reading.Errors);
        var electrics = new PinElectrics(
            entry.NeedReal("pull-up-ohms-minimum"),
            entry.NeedReal("pull-up-ohms-maximum"),
            entry.NeedReal("input-leakage-microamps-maximum"),
            reading.ReadSource(entry)
        );
        entry.Finish();
        return electrics;
    }

    public double ReadResetClock()
    {
        if (document["reset-clock"] is not { } node)
        {
            reading.Errors.Add(
                document,
                "'reset-clock' is missing: give the hertz of the CPU clock after reset, and its source"
            );
            return 0;
        }

        var entry = MapReader.Of(node, "'reset-clock'", reading.Errors);
        var hertz = entry.NeedReal("hertz");
        reading.ReadSource(entry);
        entry.Finish();
        return hertz;
    }

    private void CheckName(ScalarNode name, ICollection<string> known)
    {
        if (!known.Contains(name.Text))
        {
            reading.Errors.Add(
                name,
                $"'{name.Text}' is no peripheral, oscillator or clock output{NearestNames.Hint(name.Text, known)}"
            );
        }
    }

    private IEnumerable<DeviceNode> Rows(string section)
    {
        switch (document[section])
        {
            case null:
                return [];
            case ListNode list:
                return list.Items;
            case var other:
                reading.Errors.Add(other, $"'{section}' is a list of rows");
                return [];
        }
    }
}
