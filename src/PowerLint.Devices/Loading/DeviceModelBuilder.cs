using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>Builds a model from a member's resolved sections, checking as it goes.</summary>
internal sealed class DeviceModelBuilder(DeviceModelErrors errors)
{
    private const string StyleKey = "style";

    private static readonly string[] Sections =
    [
        "documents",
        "sources",
        "reset-clock",
        "packages",
        "registers",
        "symbols",
        "aliases",
        "shared-writes",
        "windows",
        "masked-writes",
        "follows",
        "lookups",
        "resets",
        "protections",
        "gates",
        "ports",
        "pins",
        "functions",
        "clock-outputs",
        "oscillators",
        "regulators",
        "sleep",
        "modes",
        "mode-sets",
        "peripherals",
        "interrupts",
        "interrupt-levels",
        "currents",
        "adders",
        "wake-up-times",
        "pin-electrics",
    ];

    /// <summary>Sections whose facts one entry of 'sources' vouches for; the figures name their sources row by row.</summary>
    private static readonly string[] SourcedSections =
    [
        "packages",
        "registers",
        "aliases",
        "shared-writes",
        "windows",
        "masked-writes",
        "follows",
        "lookups",
        "resets",
        "protections",
        "gates",
        "ports",
        "functions",
        "clock-outputs",
        "oscillators",
        "regulators",
        "sleep",
        "modes",
        "peripherals",
        "interrupts",
    ];

    private readonly ModelReading _reading = new(errors);

    public DeviceModel Build(string family, string core, FamilyMember member, MapNode document, OptionOverrides options)
    {
        CheckSections(document);
        ReadDocuments(document);
        var sources = ReadSources(document);
        ReadRegisters(document, options);
        foreach (var unused in options.Unused)
        {
            errors.Add(
                member.At.File,
                0,
                $"the configuration sets '{unused}', which {member.Name} does not have{NearestNames.Hint(unused, _reading.Registers.Values.Where(r => r.Kind == RegisterKind.Option).Select(r => r.Name))}"
            );
        }

        var sleep = new SleepReader(document, _reading);
        var modes = sleep.ReadModes();
        var pins = new PinReader(document, _reading);
        var clocks = new ClockReader(document, _reading);
        var tables = new TableReader(document, _reading);
        var figures = new FigureReader(document, _reading);
        var packages = Packages(document, member);
        var peripherals = sleep.ReadPeripherals();
        var peripheralNames = peripherals.Select(p => p.Name).ToHashSet(StringComparer.Ordinal);
        var allPins = pins.Read(packages);
        foreach (var named in pins.PeripheralsNamed)
        {
            sleep.CheckPeripheral(named, peripheralNames);
        }

        var outputs = clocks.ReadOutputs(pins);
        var oscillators = clocks.ReadOscillators(peripheralNames, sleep);
        var consumers = peripheralNames
            .Concat(outputs.Select(o => o.Name))
            .Concat(oscillators.Select(o => o.Name))
            .ToHashSet(StringComparer.Ordinal);
        var regulators = new RegulatorReader(document, _reading).Read([
            .. peripheralNames,
            .. oscillators.Select(o => o.Name),
        ]);
        return new DeviceModel
        {
            Name = member.Name,
            Family = family,
            Core = core,
            Style = (document[StyleKey] as ScalarNode)?.Text ?? "",
            Sections = [.. Sections.Where(document.Contains)],
            Packages = packages,
            Registers =
            [
                .. _reading
                    .Registers.Values.OrderBy(r => r.Kind is RegisterKind.Option or RegisterKind.Internal)
                    .ThenBy(r => r.Address)
                    .ThenBy(r => r.Name, StringComparer.Ordinal),
            ],
            Symbols = new SymbolReader(document, _reading).Read(),
            Aliases = clocks.ReadAliases(),
            SharedWrites = clocks.ReadSharedWrites(),
            Windows = clocks.ReadWindows(),
            MaskedWrites = clocks.ReadMaskedWrites(),
            FollowingFields = clocks.ReadFollowing(),
            Lookups = tables.ReadLookups(),
            Resets = tables.ReadResets(sleep),
            Protections = clocks.ReadProtections(),
            Gates = clocks.ReadGates(peripherals, sleep),
            Pins = allPins,
            ClockOutputs = outputs,
            Oscillators = oscillators,
            Regulators = regulators,
            SleepModes = modes,
            Sleep = sleep.ReadControl(),
            Peripherals = peripherals,
            Interrupts = sleep.ReadInterrupts(peripheralNames),
            SupplyCurrents = figures.ReadCurrents(consumers),
            Adders = figures.ReadAdders(consumers),
            WakeUpTimes = new WakeUpReader(document, _reading).Read([.. oscillators.Select(o => o.Name)]),
            PinElectrics = figures.ReadElectrics(),
            ResetClockHertz = figures.ReadResetClock(),
            Sources = sources,
        };
    }

    private void CheckSections(MapNode document)
    {
        foreach (var (key, _) in document.Entries)
        {
            if (!Sections.Contains(key.Text, StringComparer.Ordinal) && key.Text != StyleKey)
            {
                errors.Add(key, $"unknown section '{key.Text}'{NearestNames.Hint(key.Text, Sections)}");
            }
        }

        foreach (
            var section in (ReadOnlySpan<string>)
                ["packages", "registers", "ports", "modes", "peripherals", "interrupts"]
        )
        {
            if (!document.Contains(section))
            {
                errors.Add(document, $"the model lacks the section '{section}'");
            }
        }
    }

    private void ReadDocuments(MapNode document)
    {
        foreach (var (name, value) in _reading.Section(document, "documents"))
        {
            if (value is ScalarNode title)
            {
                _reading.Documents[name.Text] = title.Text;
            }
            else
            {
                errors.Add(value, $"document {name.Text} needs its number, revision and title as one text");
            }
        }
    }

    private ImmutableArray<Citation> ReadSources(MapNode document)
    {
        var named = new HashSet<string>(StringComparer.Ordinal);
        var sources = new List<Citation>();
        foreach (var (name, value) in _reading.Section(document, "sources"))
        {
            named.Add(name.Text);
            if (!SourcedSections.Contains(name.Text, StringComparer.Ordinal))
            {
                errors.Add(
                    name,
                    $"'sources' names the unknown section '{name.Text}'{NearestNames.Hint(name.Text, SourcedSections)}"
                );
            }

            sources.AddRange(
                MapReader
                    .ScalarsOf(value, $"the source of {name.Text}", errors)
                    .Select(source => _reading.ReadSource(source))
            );
        }

        foreach (var (key, section) in document.Entries)
        {
            // An empty section says that the part has nothing of the kind.
            if (
                SourcedSections.Contains(key.Text, StringComparer.Ordinal)
                && !named.Contains(key.Text)
                && section is not MapNode { Entries.Count: 0 }
            )
            {
                errors.Add(key, $"'sources' does not say where the section '{key.Text}' comes from");
            }
        }

        return [.. sources.Distinct()];
    }

    private void ReadRegisters(MapNode document, OptionOverrides options)
    {
        // A view gives way to registers that hold its bytes, wherever they are listed; registers may be loaded from options.
        foreach (
            var (name, value) in _reading
                .Section(document, "registers")
                .OrderBy(entry => RegisterReader.IsView(entry.Value))
                .ThenByDescending(entry => RegisterReader.IsOption(entry.Value))
        )
        {
            var register = RegisterReader.Read(name, value, options, _reading);
            if (register.Kind == RegisterKind.Option)
            {
                _reading.Registers[register.Name] = register;
            }
            else if (_reading.FirstTaken(register) is not { } taken)
            {
                _reading.Hold(register);
            }
            else if (RegisterReader.IsView(value))
            {
                _reading.Views[register.Name] = register;
            }
            else
            {
                _reading.Registers[register.Name] = register;
                errors.Add(value, $"registers {taken.Holder.Name} and {register.Name} overlap at 0x{taken.Address:X2}");
            }
        }
    }

    private ImmutableArray<string> Packages(MapNode document, FamilyMember member)
    {
        var known = _reading.Section(document, "packages").Select(p => p.Name.Text).ToArray();
        foreach (var package in member.Packages)
        {
            if (!known.Contains(package, StringComparer.Ordinal))
            {
                errors.Add(
                    member.At,
                    $"member {member.Name} comes in the unknown package '{package}'{NearestNames.Hint(package, known)}"
                );
            }
        }

        return member.Packages.IsEmpty ? [.. known] : member.Packages;
    }
}
