using System.Collections.Immutable;
using System.Globalization;

namespace PowerLint.Devices;

/// <summary>Reads ports, pins, their functions and the packages that bring them out.</summary>
internal sealed class PinReader(MapNode document, ModelReading reading)
{
    private static readonly Dictionary<string, PinFunctionKind> FunctionKinds = new(StringComparer.Ordinal)
    {
        ["input"] = PinFunctionKind.Input,
        ["output"] = PinFunctionKind.Output,
        ["analog"] = PinFunctionKind.Analog,
        ["reserved"] = PinFunctionKind.Reserved,
    };

    private readonly Dictionary<string, MapNode> _pins = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string Port, int Bit)> _places = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<PinFunction>> _functions = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> _packages = new(StringComparer.Ordinal);

    // Pins of the family that this part may lack: its larger packages have them.
    private readonly HashSet<string> _ofFamily = new(StringComparer.Ordinal);

    /// <summary>Names of the peripherals that functions belong to, with where they stand.</summary>
    public List<ScalarNode> PeripheralsNamed { get; } = [];

    public ImmutableArray<Pin> Read(ImmutableArray<string> packages)
    {
        ReadPorts();
        ReadFamilyPins();
        ReadOverrides();
        ReadFunctions();
        ReadPackages(packages);
        return
        [
            .. _places
                .OrderBy(p => p.Value.Port, StringComparer.Ordinal)
                .ThenBy(p => p.Value.Bit)
                .Select(p => ReadPin(p.Key, p.Value.Port, p.Value.Bit)),
        ];
    }

    /// <summary>Whether a pin of that name exists.</summary>
    public bool Has(string pin) => _places.ContainsKey(pin);

    /// <summary>Whether the part lacks a pin that other members of its family have: what uses it there does not count here.</summary>
    public bool IsElsewhere(string pin) => !_places.ContainsKey(pin) && _ofFamily.Contains(pin);

    private void ReadFamilyPins()
    {
        foreach (var (package, value) in reading.Section(document, "packages"))
        {
            foreach (var scalar in MapReader.ScalarsOf(value, $"package {package.Text}", reading.Errors))
            {
                _ofFamily.UnionWith(NameRanges.Expand([scalar.Text]));
            }
        }
    }

    private void ReadPorts()
    {
        foreach (var (port, value) in reading.Section(document, "ports"))
        {
            var entry = MapReader.Of(value, $"port {port.Text}", reading.Errors);
            var name = entry.NeedText("name") ?? "";
            var bits = entry.Scalars("bits").ToArray();
            if (bits.Length == 0)
            {
                reading.Errors.Add(value, $"port {port.Text} lacks 'bits', such as 0..7");
            }

            var template = new MapNode(value.File, value.Line);
            foreach (var (key, part) in entry.Node.Entries)
            {
                if (key.Text is not ("name" or "bits"))
                {
                    template.Set(key, part);
                }
            }

            foreach (var bit in bits.SelectMany(Bits))
            {
                var values = new Dictionary<string, DeviceNode>(StringComparer.Ordinal)
                {
                    ["port"] = port,
                    ["bit"] = Scalar(value, bit.ToString(CultureInfo.InvariantCulture)),
                };
                var pin = ((ScalarNode)Placeholders.Fill(Scalar(value, name), values, reading.Errors)).Text;
                if (!_places.TryAdd(pin, (port.Text, bit)))
                {
                    reading.Errors.Add(value, $"two pins are called {pin}");
                }

                _pins[pin] = (MapNode)Placeholders.Fill(template, values, reading.Errors);
            }
        }
    }

    private IEnumerable<int> Bits(ScalarNode bits)
    {
        if (Numbers.TryParseRange(bits.Text, out var first, out var last) && first <= last && last < 32)
        {
            return Enumerable.Range((int)first, (int)(last - first + 1));
        }

        reading.Errors.Add(bits, $"'{bits.Text}' names no bits of a port: write 3 or 0..7");
        return [];
    }

    private static ScalarNode Scalar(DeviceNode at, string text) => new(at.File, at.Line, text, quoted: false);

    // A property given for a pin takes the place of the port's.
    private void ReadOverrides()
    {
        foreach (var (name, value) in reading.Section(document, "pins"))
        {
            if (!_pins.TryGetValue(name.Text, out var pin))
            {
                if (!IsElsewhere(name.Text))
                {
                    UnknownPin(name);
                }

                continue;
            }

            var merged = new MapNode(value.File, value.Line);
            foreach (
                var (key, part) in pin.Entries.Concat(
                    MapReader.Of(value, $"pin {name.Text}", reading.Errors).Node.Entries
                )
            )
            {
                merged.Set(key, part);
            }

            _pins[name.Text] = merged;
        }
    }

    private void UnknownPin(ScalarNode name) =>
        reading.Errors.Add(name, $"no port has a pin '{name.Text}'{NearestNames.Hint(name.Text, _pins.Keys)}");

    private void ReadFunctions()
    {
        foreach (var (peripheral, signals) in reading.Section(document, "functions"))
        {
            var owner = peripheral.Text is "none" ? null : peripheral.Text;
            if (owner is not null)
            {
                PeripheralsNamed.Add(peripheral);
            }

            foreach (
                var (signal, value) in MapReader
                    .Of(signals, $"functions of {peripheral.Text}", reading.Errors)
                    .Node.Entries
            )
            {
                ReadFunction(owner, signal, value);
            }
        }
    }

    private void ReadFunction(string? peripheral, ScalarNode signal, DeviceNode value)
    {
        var outer = MapReader.Of(value, $"function {signal.Text}", reading.Errors);
        var pins = outer
            .Scalars("pin")
            .Concat(outer.Scalars("pins"))
            .SelectMany(pin => NameRanges.Expand([pin.Text]).Select(one => Scalar(pin, one)))
            .ToArray();
        if (pins.Length == 0)
        {
            reading.Errors.Add(value, $"function {signal.Text} lacks 'pin'");
        }

        for (var n = 0; n < pins.Length; n++)
        {
            // "-" keeps the count where a channel has no pin.
            if (pins[n].Text is "-" || IsElsewhere(pins[n].Text))
            {
                continue;
            }

            if (!_places.TryGetValue(pins[n].Text, out var place))
            {
                UnknownPin(pins[n]);
                continue;
            }

            var values = new Dictionary<string, DeviceNode>(StringComparer.Ordinal)
            {
                ["n"] = Scalar(value, n.ToString(CultureInfo.InvariantCulture)),
                ["pin"] = pins[n],
                ["port"] = Scalar(value, place.Port),
                ["bit"] = Scalar(value, place.Bit.ToString(CultureInfo.InvariantCulture)),
            };
            var name = ((ScalarNode)Placeholders.Fill(signal, values, reading.Errors)).Text;
            var entry = MapReader.Of(
                Placeholders.Fill(value, values, reading.Errors),
                $"function {name}",
                reading.Errors
            );
            entry.Take("pin");
            entry.Take("pins");
            if (entry.Need("kind") is null)
            {
                continue;
            }

            var function = new PinFunction(
                name,
                peripheral,
                entry.Choice("kind", FunctionKinds, PinFunctionKind.Input),
                ConditionReader.Read(entry.Need("when"), reading),
                entry.Flag("latched", otherwise: false)
            );
            entry.Finish();
            if (!_functions.TryGetValue(pins[n].Text, out var functions))
            {
                _functions[pins[n].Text] = functions = [];
            }

            functions.Add(function);
        }
    }

    private void ReadPackages(ImmutableArray<string> wanted)
    {
        foreach (var (package, value) in reading.Section(document, "packages"))
        {
            if (!wanted.Contains(package.Text, StringComparer.Ordinal))
            {
                continue;
            }

            foreach (var scalar in MapReader.ScalarsOf(value, $"package {package.Text}", reading.Errors))
            {
                foreach (var pin in NameRanges.Expand([scalar.Text]))
                {
                    if (!_pins.ContainsKey(pin))
                    {
                        UnknownPin(new ScalarNode(scalar.File, scalar.Line, pin, quoted: false));
                        continue;
                    }

                    if (!_packages.TryGetValue(pin, out var packages))
                    {
                        _packages[pin] = packages = [];
                    }

                    packages.Add(package.Text);
                }
            }
        }

        foreach (var packages in _packages.Values)
        {
            packages.Sort((a, b) => wanted.IndexOf(a).CompareTo(wanted.IndexOf(b)));
        }
    }

    private Pin ReadPin(string name, string port, int bit)
    {
        var entry = MapReader.Of(_pins[name], $"pin {name}", reading.Errors);
        var interrupt = ConditionReader.Read(entry.Take("interrupt-enabled"), reading);
        var pin = new Pin
        {
            Name = name,
            Port = port,
            Bit = bit,
            BondedIn = [.. _packages.GetValueOrDefault(name, [])],
            Output = ConditionReader.Read(entry.Need("output"), reading),
            OutputHigh = ConditionReader.Read(entry.Need("high"), reading),
            PullUp = ConditionReader.Read(entry.Take("pull-up"), reading),
            PullDown = ConditionReader.Read(entry.Take("pull-down"), reading),
            InputBufferOff = ConditionReader.Read(entry.Take("input-buffer-off"), reading),
            InterruptEnabled = interrupt,
            BufferKeptInSleep = entry.Take("buffer-kept-in-sleep") is { } kept
                ? ConditionReader.Read(kept, reading)
                : interrupt,
            Level = entry.Take("level") is ScalarNode level ? FieldReferences.Read(level, reading) : null,
            Functions = [.. _functions.GetValueOrDefault(name, [])],
            ParkAsOutputLow = ConditionReader.ReadWrites(entry.Take("park-output-low"), reading),
            ParkWithPullUp = ConditionReader.ReadWrites(entry.Take("park-pull-up"), reading),
            ParkWithBufferOff = ConditionReader.ReadWrites(entry.Take("park-buffer-off"), reading),
        };
        entry.Finish();
        return pin;
    }
}
