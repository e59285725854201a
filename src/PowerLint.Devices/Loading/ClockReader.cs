using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>Reads clock outputs, oscillators, gates, change protections, aliases and following bits.</summary>
internal sealed class ClockReader(MapNode document, ModelReading reading)
{
    private static readonly Dictionary<string, AliasEffect> Effects = new(StringComparer.Ordinal)
    {
        ["set"] = AliasEffect.Set,
        ["clear"] = AliasEffect.Clear,
        ["toggle"] = AliasEffect.Toggle,
        ["same"] = AliasEffect.Same,
    };

    private static readonly Dictionary<string, ProtectionKind> ProtectionKinds = new(StringComparer.Ordinal)
    {
        ["timed-key"] = ProtectionKind.TimedKey,
        ["unlock-bit"] = ProtectionKind.UnlockBit,
        ["key-in-word"] = ProtectionKind.KeyInWord,
        ["key-sequence"] = ProtectionKind.KeySequence,
        ["unlock-condition"] = ProtectionKind.UnlockCondition,
        ["unlock-later"] = ProtectionKind.UnlockLater,
    };

    public ImmutableArray<ClockOutput> ReadOutputs(PinReader pins)
    {
        var outputs = ImmutableArray.CreateBuilder<ClockOutput>();
        foreach (var (name, value) in reading.Section(document, "clock-outputs"))
        {
            var entry = MapReader.Of(value, $"clock output {name.Text}", reading.Errors);
            var output = entry.Text("output") ?? name.Text;
            var pin = entry.Text("pin");
            if (pin is not null && pins.IsElsewhere(pin))
            {
                continue;
            }

            outputs.Add(
                new ClockOutput(
                    output,
                    pin,
                    ConditionReader.Read(entry.Need("on"), reading),
                    reading.ReadModesWhen(entry.Need("runs-in"))
                )
            );
            entry.Finish();
            if (pin is not null && !pins.Has(pin))
            {
                reading.Errors.Add(value, $"no port has a pin '{pin}'");
            }
        }

        return outputs.ToImmutable();
    }

    public ImmutableArray<Oscillator> ReadOscillators(ICollection<string> peripherals, SleepReader sleep)
    {
        var oscillators = ImmutableArray.CreateBuilder<Oscillator>();
        foreach (var (name, value) in reading.Section(document, "oscillators"))
        {
            var entry = MapReader.Of(value, $"oscillator {name.Text}", reading.Errors);
            var consumers = ImmutableArray.CreateBuilder<OscillatorConsumer>();
            if (entry.Take("consumers") is { } table)
            {
                foreach (var (peripheral, when) in MapReader.Of(table, "'consumers'", reading.Errors).Node.Entries)
                {
                    sleep.CheckPeripheral(peripheral, peripherals);
                    consumers.Add(new OscillatorConsumer(peripheral.Text, ConditionReader.Read(when, reading)));
                }
            }

            oscillators.Add(
                new Oscillator(
                    name.Text,
                    ConditionReader.Read(entry.Need("on"), reading),
                    reading.ReadModesWhen(entry.Need("runs-in")),
                    consumers.ToImmutable()
                )
            );
            entry.Finish();
        }

        return oscillators.ToImmutable();
    }

    public ImmutableArray<ClockGate> ReadGates(ImmutableArray<Peripheral> peripherals, SleepReader sleep)
    {
        var gates = ImmutableArray.CreateBuilder<ClockGate>();
        var names = peripherals.Select(p => p.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var (name, value) in reading.Section(document, "gates"))
        {
            var entry = MapReader.Of(value, $"gate {name.Text}", reading.Errors);
            var behind = entry.Scalars("peripherals").ToArray();
            foreach (var scalar in behind)
            {
                sleep.CheckPeripheral(scalar, names);
            }

            ImmutableArray<Register> registers = [.. sleep.RegistersOf(entry)];
            if (registers.IsEmpty)
            {
                registers =
                [
                    .. behind.SelectMany(b =>
                        peripherals
                            .Where(p => string.Equals(p.Name, b.Text, StringComparison.Ordinal))
                            .SelectMany(p => p.Registers)
                    ),
                ];
            }

            gates.Add(
                new ClockGate(
                    name.Text,
                    ConditionReader.Read(entry.Need("open"), reading),
                    [.. behind.Select(b => b.Text)],
                    registers,
                    entry.Flag("loses-writes", otherwise: false)
                )
            );
            entry.Finish();
        }

        foreach (var (name, value) in reading.Section(document, "peripherals"))
        {
            if (
                (value as MapNode)?["gate"] is ScalarNode gate
                && !gates.Any(g => string.Equals(g.Name, gate.Text, StringComparison.Ordinal))
            )
            {
                reading.Errors.Add(
                    gate,
                    $"peripheral {name.Text} has the unknown gate '{gate.Text}'{NearestNames.Hint(gate.Text, gates.Select(g => g.Name))}"
                );
            }
        }

        return gates.ToImmutable();
    }

    public ImmutableArray<ChangeProtection> ReadProtections()
    {
        var protections = ImmutableArray.CreateBuilder<ChangeProtection>();
        foreach (var (name, value) in reading.Section(document, "protections"))
        {
            var entry = MapReader.Of(value, $"protection {name.Text}", reading.Errors);
            entry.Need("kind");
            var kind = entry.Choice("kind", ProtectionKinds, ProtectionKind.UnlockBit);
            var keyRegister = entry.Take("key-register") is ScalarNode key
                ? FieldReferences.FindRegister(key, key.Text, reading)
                : null;
            if (keyRegister is null && kind is not (ProtectionKind.UnlockCondition or ProtectionKind.UnlockLater))
            {
                reading.Errors.Add(value, $"protection {name.Text} lacks 'key-register'");
            }

            var keys = ImmutableArray.CreateBuilder<ulong>();
            foreach (var scalar in entry.Scalars("keys"))
            {
                if (Numbers.TryParse(scalar.Text, out var number))
                {
                    keys.Add(number);
                }
                else
                {
                    reading.Errors.Add(scalar, "a key is a number");
                }
            }

            protections.Add(
                new ChangeProtection
                {
                    Name = name.Text,
                    Kind = kind,
                    KeyRegister = keyRegister,
                    KeyMask = entry.Number("key-mask") ?? WholeOf(keyRegister),
                    Keys = keys.ToImmutable(),
                    WindowCycles = (int)(entry.Number("window-cycles") ?? 0),
                    Open = ConditionReader.Read(entry.Take("open"), reading),
                    Protects = [.. Protected(entry)],
                    SettingNeedsNoKey = entry.Flag("setting-needs-no-key", otherwise: false),
                    WrongKeyResets = entry.Flag("wrong-key-resets", otherwise: false),
                    UnlockCode = entry.Text("unlock-code"),
                }
            );
            entry.Finish();
        }

        return protections.ToImmutable();
    }

    private static ulong WholeOf(Register? register) =>
        register is null || register.WidthBits >= 64 ? ulong.MaxValue : (1UL << register.WidthBits) - 1;

    public ImmutableArray<RegisterAlias> ReadAliases()
    {
        var aliases = ImmutableArray.CreateBuilder<RegisterAlias>();
        // A register may act in two ways: its halves set and clear.
        var entries =
            from section in reading.Section(document, "aliases")
            from item in section.Value is ListNode list ? list.Items : [section.Value]
            select (section.Name, Value: item);
        foreach (var (name, value) in entries)
        {
            var entry = MapReader.Of(value, $"alias {name.Text}", reading.Errors);
            entry.Need("effect");
            var effect = entry.Choice("effect", Effects, AliasEffect.Same);
            var named = entry.Take("source") as ScalarNode ?? name;
            var source = FieldReferences.FindRegister(named, named.Text, reading);
            var target = entry.Need("target") is ScalarNode to
                ? FieldReferences.FindRegister(to, to.Text, reading)
                : null;
            var shift = (int)(entry.Real("shift") ?? 0);
            var mask = entry.Number("mask");
            var readsTarget = entry.Flag("reads-target", otherwise: false);
            var when = entry.Take("when") is { } node ? ConditionReader.Read(node, reading) : Condition.Always;
            entry.Finish();
            if (source is not null && target is not null)
            {
                aliases.Add(
                    new RegisterAlias(
                        source,
                        effect,
                        target,
                        shift,
                        mask ?? ((1UL << source.WidthBits) - 1),
                        readsTarget,
                        when
                    )
                );
            }
        }

        return aliases.ToImmutable();
    }

    public ImmutableArray<SharedWrite> ReadSharedWrites()
    {
        var writes = ImmutableArray.CreateBuilder<SharedWrite>();
        foreach (var (name, value) in reading.Section(document, "shared-writes"))
        {
            var entry = MapReader.Of(value, $"shared write {name.Text}", reading.Errors);
            var mask = entry.Need("mask") is ScalarNode by ? FieldReferences.FindRegister(by, by.Text, reading) : null;
            var targets = ImmutableArray.CreateBuilder<Register>();
            foreach (var scalar in entry.Scalars("targets"))
            {
                if (FieldReferences.FindRegister(scalar, scalar.Text, reading) is { } target)
                {
                    targets.Add(target);
                }
            }

            entry.Finish();
            if (mask is not null)
            {
                writes.Add(new SharedWrite(mask, targets.ToImmutable()));
            }
        }

        return writes.ToImmutable();
    }

    public ImmutableArray<RegisterWindow> ReadWindows()
    {
        var windows = ImmutableArray.CreateBuilder<RegisterWindow>();
        foreach (var (name, value) in reading.Section(document, "windows"))
        {
            var entry = MapReader.Of(value, $"window {name.Text}", reading.Errors);
            var window = FieldReferences.FindRegister(name, name.Text, reading);
            var index = entry.Need("index") is ScalarNode by ? FieldReferences.Read(by, reading) : null;
            var rows = ImmutableArray.CreateBuilder<Register>();
            foreach (var row in NameRanges.Expand(entry.Texts("rows")))
            {
                if (FieldReferences.FindRegister(name, row, reading) is { } register)
                {
                    rows.Add(register);
                }
            }

            entry.Finish();
            if (window is null || index is null || rows.Count == 0)
            {
                continue;
            }

            if (!ReferenceEquals(index.Register, window) || rows.Any(row => row.WidthBits != window.WidthBits))
            {
                reading.Errors.Add(
                    value,
                    $"window {name.Text} needs an index of its own, and rows of its own {window.WidthBits} bits"
                );
                continue;
            }

            windows.Add(new RegisterWindow(window, index, rows.ToImmutable()));
        }

        return windows.ToImmutable();
    }

    public ImmutableArray<MaskedWrite> ReadMaskedWrites()
    {
        var writes = ImmutableArray.CreateBuilder<MaskedWrite>();
        foreach (var (name, value) in reading.Section(document, "masked-writes"))
        {
            var entry = MapReader.Of(value, $"masked write {name.Text}", reading.Errors);
            var effect = entry.Need("effect") is null
                ? AliasEffect.Same
                : entry.Choice("effect", Effects, AliasEffect.Same);
            var trigger = FieldReferences.FindRegister(name, name.Text, reading);
            var from = entry.Need("value") is ScalarNode by ? FieldReferences.FindRegister(by, by.Text, reading) : null;
            ImmutableArray<Register> targets =
            [
                .. entry
                    .Scalars("targets")
                    .Select(scalar => FieldReferences.FindRegister(scalar, scalar.Text, reading))
                    .OfType<Register>(),
            ];
            entry.Finish();
            if (trigger is not null && from is not null)
            {
                writes.Add(new MaskedWrite(trigger, effect, from, targets));
            }
        }

        return writes.ToImmutable();
    }

    public ImmutableArray<FollowingField> ReadFollowing()
    {
        var follows = ImmutableArray.CreateBuilder<FollowingField>();
        foreach (var (name, value) in reading.Section(document, "follows"))
        {
            var follower = FieldReferences.Read(name, reading);
            var leader = value is ScalarNode scalar ? FieldReferences.Read(scalar, reading) : null;
            if (follower is null || leader is null)
            {
                continue;
            }

            if (follower.WidthBits != leader.WidthBits)
            {
                reading.Errors.Add(value, $"{follower.Name} and {leader.Name} differ in width");
                continue;
            }

            follows.Add(new FollowingField(follower, leader));
        }

        return follows.ToImmutable();
    }

    private IEnumerable<FieldReference> Protected(MapReader entry)
    {
        foreach (var scalar in entry.Scalars("protects"))
        {
            if (scalar.Text.EndsWith(".*", StringComparison.Ordinal))
            {
                foreach (var whole in SettingsOf(scalar))
                {
                    yield return whole;
                }
            }
            else if (FieldReferences.Read(scalar, reading) is { } field)
            {
                yield return field;
            }
        }
    }

    // NAME.* stands for all that a program sets in a peripheral.
    private IEnumerable<FieldReference> SettingsOf(ScalarNode pattern)
    {
        var settings = reading
            .Registers.Values.Where(register =>
                register.Kind == RegisterKind.Configuration
                && register.Name.StartsWith(pattern.Text[..^1], StringComparison.Ordinal)
            )
            .ToArray();
        if (settings.Length == 0)
        {
            reading.Errors.Add(pattern, $"no register to be set has a name that begins with '{pattern.Text[..^1]}'");
        }

        return settings.Select(register => new FieldReference(register, 0, register.WidthBits, register.Name));
    }
}
