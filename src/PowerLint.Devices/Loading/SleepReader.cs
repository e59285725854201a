using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>Reads sleep modes and control, interrupts and peripherals.</summary>
internal sealed class SleepReader(MapNode document, ModelReading reading)
{
    private const string NeedsGlobalEnable = "waking-needs-global-enable";

    private readonly Dictionary<string, ImmutableArray<Period>> _periods = new(StringComparer.Ordinal);

    /// <summary>The modes, shallowest first; they are what everything else refers to.</summary>
    public ImmutableArray<SleepMode> ReadModes()
    {
        var needsGlobalEnable =
            document["sleep"] is MapNode sleep
            && MapReader.Of(sleep, "'sleep'", reading.Errors).Flag(NeedsGlobalEnable, otherwise: true);
        var modes = new List<(SleepMode Mode, DeviceNode At)>();
        foreach (var (name, value) in reading.Section(document, "modes"))
        {
            var entry = MapReader.Of(value, $"mode {name.Text}", reading.Errors);
            var resumes = entry.Flag("resumes", otherwise: true);
            var mode = new SleepMode
            {
                Name = name.Text,
                Depth = (int)(entry.NeedNumber("depth") ?? 0),
                Selected = ConditionReader.Read(entry.Need("select"), reading),
                Resumes = resumes,
                // What wakes from a mode that ends in a reset is no interrupt to the core.
                WakingNeedsGlobalEnable = entry.Flag(NeedsGlobalEnable, otherwise: resumes && needsGlobalEnable),
                CutsInputBuffers = entry.Flag("cuts-input-buffers", otherwise: false),
            };
            entry.Finish();
            if (modes.Find(m => m.Mode.Depth == mode.Depth) is { Mode: { } same } && mode.Depth != 0)
            {
                reading.Errors.Add(value, $"modes {same.Name} and {mode.Name} have the same depth {mode.Depth}");
            }

            modes.Add((mode, value));
        }

        ImmutableArray<SleepMode> ordered = [.. modes.Select(m => m.Mode).OrderBy(m => m.Depth)];
        reading.Modes = [.. ordered.Select(m => m.Name)];
        foreach (var (name, value) in reading.Section(document, "mode-sets"))
        {
            reading.ModeSets[name.Text] = reading.ReadModes(value);
        }

        return ordered;
    }

    public SleepControl ReadControl()
    {
        if (document["sleep"] is not { } node)
        {
            reading.Errors.Add(document, "'sleep' is missing: say what enables the sleep instruction");
            return new SleepControl(Condition.Always, null, null, []);
        }

        var entry = MapReader.Of(node, "'sleep'", reading.Errors);
        var stopsCpu = entry.Take("stops-cpu") is ScalarNode stop ? FieldReferences.Read(stop, reading) : null;
        if (stopsCpu is { Register.Kind: not RegisterKind.Internal } or { WidthBits: not 1 })
        {
            reading.Errors.Add(node, "'stops-cpu' names one bit of a register of kind internal");
        }

        var waitsForEvent = entry.Take("waits-for-event") is ScalarNode wait
            ? FieldReferences.Read(wait, reading)
            : null;
        if (waitsForEvent is { Register.Kind: not RegisterKind.Internal } or { WidthBits: not 1 })
        {
            reading.Errors.Add(node, "'waits-for-event' names one bit of a register of kind internal");
        }

        // Of the modes: see there.
        _ = entry.Take(NeedsGlobalEnable);
        var enableField = entry.Take("enable-bit") is ScalarNode bit ? FieldReferences.Read(bit, reading) : null;
        var control = new SleepControl(
            enableField is null
                ? Condition.Always
                : new Condition([
                    [new FieldCondition(enableField, [1])],
                ]),
            enableField,
            entry.Take("global-interrupt-enable") is ScalarNode global ? FieldReferences.Read(global, reading) : null,
            ReadDebug(entry.Take("debug-in-sleep")),
            // What a handler's return puts back decides whether the CPU sleeps on.
            entry.Take("sleep-on-exit")
                is ScalarNode onExit
                ? FieldReferences.Read(onExit, reading)
                : stopsCpu,
            entry.Take("trigger") is { } trigger ? ConditionReader.Read(trigger, reading) : null,
            stopsCpu?.Register,
            stopsCpu,
            waitsForEvent,
            entry.Take("pending-sets-event") is ScalarNode pending ? FieldReferences.Read(pending, reading) : null
        )
        {
            ClearedBySleep = ReadClearedBySleep(entry, node),
        };
        entry.Finish();
        return control;
    }

    private ImmutableArray<FieldReference> ReadClearedBySleep(MapReader sleep, DeviceNode node)
    {
        ImmutableArray<FieldReference> bits = [.. References(sleep, "cleared-by-sleep")];
        foreach (var bit in bits.Where(bit => bit.WidthBits != 1))
        {
            reading.Errors.Add(node, $"'cleared-by-sleep' names {bit.Name}, which is more than one bit: name its bits");
        }

        return bits;
    }

    // A bit alone keeps clocks on in all modes when it is set; a mapping says when, and in which modes.
    private ImmutableArray<ModesWhen> ReadDebug(DeviceNode? node)
    {
        var debug = ImmutableArray.CreateBuilder<ModesWhen>();
        foreach (
            var item in node is ListNode list ? list.Items
            : node is null ? []
            : [node]
        )
        {
            if (item is not ScalarNode scalar)
            {
                debug.AddRange(reading.ReadModesWhen(item));
            }
            else if (FieldReferences.Read(scalar, reading) is { } bits)
            {
                if (bits.WidthBits > 1)
                {
                    reading.Errors.Add(
                        scalar,
                        $"{bits.Name} has several bits: write {{ modes: …, when: {{ {scalar.Text}: … }} }}"
                    );
                }

                debug.Add(
                    new ModesWhen(
                        reading.Modes,
                        new Condition([
                            [new FieldCondition(bits, [1])],
                        ])
                    )
                );
            }
        }

        return debug.ToImmutable();
    }

    // What a timer says of its periods holds for all of its periodic interrupts that say nothing else.
    private ImmutableArray<Period> ReadPeriods(MapReader interrupt, ScalarNode? peripheral) =>
        interrupt.Take("periods") is { } own ? PeriodReader.Read(own, reading)
        : (interrupt.Node["periodic"] as ScalarNode)?.Text == "true"
        && peripheral is not null
        && _periods.TryGetValue(peripheral.Text, out var shared)
            ? shared
        : [];

    public ImmutableArray<Interrupt> ReadInterrupts(ICollection<string> peripherals)
    {
        var numbers = new Dictionary<int, string>();
        var names = new Dictionary<string, int>(StringComparer.Ordinal);
        var interrupts = new List<Interrupt>();
        var levels = ReadLevels();
        foreach (var (name, value) in reading.Section(document, "interrupts"))
        {
            var entry = MapReader.Of(value, $"interrupt {name.Text}", reading.Errors);
            var peripheral = entry.Take("peripheral");
            CheckPeripheral(peripheral, peripherals);
            var (cleared, clearedWhen) = ReadClearedAtEntry(entry);
            var interrupt = new Interrupt
            {
                Name = entry.Text("vector") ?? name.Text,
                OtherNames = entry.Texts("other-names"),
                Number = ReadVector(entry),
                Peripheral = (peripheral as ScalarNode)?.Text,
                Enabled = ReadEnabled(entry, levels),
                Flags = [.. References(entry, "flags")],
                HandlerClearsFlag = entry.Flag("handler-clears-flag", otherwise: true),
                ClearedAtEntry = cleared,
                ClearedWhen = clearedWhen,
                Wakes = reading.ReadModesWhen(entry.Take("wakes")),
                IsPeriodic = entry.Flag("periodic", otherwise: false),
                Periods = ReadPeriods(entry, peripheral as ScalarNode),
            };
            entry.Finish();
            if (!interrupt.IsPeriodic && !interrupt.Periods.IsEmpty)
            {
                reading.Errors.Add(value, $"interrupt {name.Text} has 'periods' and is not 'periodic'");
            }

            if (
                interrupt.HasVector
                && !numbers.TryAdd(interrupt.Number, interrupt.Name)
                && !string.Equals(numbers[interrupt.Number], interrupt.Name, StringComparison.Ordinal)
            )
            {
                reading.Errors.Add(
                    value,
                    $"interrupts {numbers[interrupt.Number]} and {interrupt.Name} have the same number {interrupt.Number}"
                );
            }

            foreach (var spelling in interrupt.OtherNames.Prepend(interrupt.Name))
            {
                if (!names.TryAdd(spelling, interrupt.Number) && names[spelling] != interrupt.Number)
                {
                    reading.Errors.Add(value, $"two interrupts are called {spelling}");
                }
            }

            interrupts.Add(interrupt);
        }

        return [.. interrupts.OrderBy(i => i.Number)];
    }

    public ImmutableArray<Peripheral> ReadPeripherals()
    {
        var peripherals = ImmutableArray.CreateBuilder<Peripheral>();
        foreach (var (name, value) in reading.Section(document, "peripherals"))
        {
            var entry = MapReader.Of(value, $"peripheral {name.Text}", reading.Errors);
            peripherals.Add(
                new Peripheral
                {
                    Name = name.Text,
                    On = ConditionReader.Read(entry.Need("on"), reading),
                    Gate = entry.Text("gate"),
                    DrawsIn = reading.ReadModesWhen(entry.Need("draws-in")),
                    DrawsWhenGated = entry.Flag("draws-when-gated", otherwise: false),
                    WorksIn = reading.ReadModesWhen(entry.Need("works-in")),
                    GuardsSupply = entry.Flag("guards-supply", otherwise: false),
                    OutputInUse = ConditionReader.Read(entry.Take("output-in-use"), reading),
                    Registers = [.. RegistersOf(entry)],
                    SwitchOff = ConditionReader.ReadWrites(entry.Take("switch-off"), reading),
                }
            );
            _periods[name.Text] = PeriodReader.Read(entry.Take("periods"), reading);
            entry.Finish();
        }

        return peripherals.ToImmutable();
    }

    /// <summary>Register names; <c>NAME.*</c> and <c>NAME*</c> stand for all that begin so.</summary>
    public IEnumerable<Register> RegistersOf(MapReader entry)
    {
        foreach (var scalar in entry.Scalars("registers"))
        {
            if (!scalar.Text.EndsWith('*'))
            {
                if (FieldReferences.FindRegister(scalar, scalar.Text, reading) is { } register)
                {
                    yield return register;
                }

                continue;
            }

            var any = false;
            foreach (var register in reading.Registers.Values)
            {
                if (register.Name.StartsWith(scalar.Text[..^1], StringComparison.Ordinal))
                {
                    any = true;
                    yield return register;
                }
            }

            foreach (var view in reading.Views.Values)
            {
                if (
                    view.Name.StartsWith(scalar.Text[..^1], StringComparison.Ordinal)
                    && FieldReferences.HolderOf(view, reading) is { } holder
                )
                {
                    any = true;
                    yield return holder;
                }
            }

            if (!any)
            {
                reading.Errors.Add(scalar, $"no register's name begins with '{scalar.Text[..^1]}'");
            }
        }
    }

    public void CheckPeripheral(DeviceNode? node, ICollection<string> peripherals)
    {
        if (node is ScalarNode scalar && !peripherals.Contains(scalar.Text))
        {
            reading.Errors.Add(
                scalar,
                $"unknown peripheral '{scalar.Text}'{NearestNames.Hint(scalar.Text, peripherals)}"
            );
        }
    }

    private static int ReadVector(MapReader entry) =>
        entry.Flag("has-vector", otherwise: true) ? (int)(entry.NeedNumber("number") ?? 0) : -1;

    // An enable that lasts for one interrupt, under a condition: a watchdog's that goes over to resetting.
    private (ImmutableArray<FieldReference> Bits, Condition When) ReadClearedAtEntry(MapReader interrupt)
    {
        if (interrupt.Take("cleared-at-entry") is not { } node)
        {
            return ([], Condition.Always);
        }

        var entry = MapReader.Of(node, "'cleared-at-entry'", reading.Errors);
        ImmutableArray<FieldReference> bits = [.. References(entry, "bits")];
        var when = entry.Take("when") is { } condition ? ConditionReader.Read(condition, reading) : Condition.Always;
        entry.Finish();
        foreach (var bit in bits.Where(bit => bit.WidthBits != 1))
        {
            reading.Errors.Add(node, $"'cleared-at-entry' names {bit.Name}, which is more than one bit: name its bits");
        }

        return (bits, when);
    }

    // Where interrupts have levels, one is enabled when its level is let through.
    private List<(ulong Level, FieldReference Enable)> ReadLevels()
    {
        var levels = new List<(ulong, FieldReference)>();
        foreach (var (level, value) in reading.Section(document, "interrupt-levels"))
        {
            if (Numbers.TryParse(level.Text, out var number) && value is ScalarNode bit)
            {
                if (FieldReferences.Read(bit, reading) is { } enable)
                {
                    levels.Add((number, enable));
                }
            }
            else
            {
                reading.Errors.Add(level, "'interrupt-levels' maps level numbers to the bits that let them through");
            }
        }

        return levels;
    }

    private Condition ReadEnabled(MapReader entry, List<(ulong Level, FieldReference Enable)> levels)
    {
        var fields = References(entry, "level").ToArray();
        if (fields.Length == 0)
        {
            return ConditionReader.Read(entry.Need("enabled"), reading);
        }

        var further = entry.Take("enabled") is { } node ? ConditionReader.Read(node, reading) : Condition.Always;
        return new Condition([
            .. from field in fields
            from level in levels
            from alternative in further.Alternatives
            select (ImmutableArray<FieldCondition>)
                [new FieldCondition(field, [level.Level]), new FieldCondition(level.Enable, [1]), .. alternative],
        ]);
    }

    private IEnumerable<FieldReference> References(MapReader entry, string key)
    {
        foreach (var scalar in entry.Scalars(key))
        {
            if (FieldReferences.Read(scalar, reading) is { } field)
            {
                yield return field;
            }
        }
    }
}
