using PowerLint.Devices;

namespace PowerLint.Analysis;

/// <summary>A byte of a register of the model.</summary>
/// <param name="Register">The register.</param>
/// <param name="ByteIndex">Which of its bytes, from the lowest.</param>
internal readonly record struct RegisterSlot(Register Register, int ByteIndex)
{
    public int Shift => 8 * ByteIndex;

    public byte Take(ulong mask) => (byte)(mask >> Shift);
}

/// <summary>The model's registers by address, with what acts on each.</summary>
internal sealed class RegisterMap
{
    /// <summary>Option bytes have no address; they get one up here so that conditions can look at them like at registers.</summary>
    private const ulong OptionBase = 1UL << 60;

    /// <summary>The status registers of what handlers interrupted, by nesting: no data space reaches here.</summary>
    public const ulong SavedStatusBase = 1UL << 61;

    private readonly Dictionary<ulong, RegisterSlot> _slots = [];
    private readonly Dictionary<Register, ulong> _addresses = [];
    private readonly Dictionary<string, Register> _byName = new(StringComparer.Ordinal);

    public RegisterMap(DeviceModel device)
    {
        Device = device;
        var nextOption = OptionBase;
        foreach (var register in device.Registers)
        {
            var isOption = register.Kind == RegisterKind.Option;
            var address = isOption ? nextOption : register.Address;
            nextOption += isOption ? 8u : 0;
            _addresses[register] = address;
            _byName.TryAdd(register.Name, register);
            for (var i = 0; i < register.WidthBits / 8; i++)
            {
                // Where two registers share bytes (a pair and its halves), the narrower one owns them.
                if (
                    !_slots.TryGetValue(address + (ulong)i, out var other)
                    || other.Register.WidthBits > register.WidthBits
                )
                {
                    _slots[address + (ulong)i] = new RegisterSlot(register, i);
                }
            }

            if (register.IsAddressable)
            {
                HighestAddress = Math.Max(HighestAddress, address + (ulong)(register.WidthBits / 8) - 1);
            }
        }

        Protections = Index(device.Protections, p => p.Protects.Select(f => f.Register));
        Keys = Index(device.Protections.Where(p => p.KeyRegister is not null), p => [p.KeyRegister!]);
        Gates = Index(device.Gates.Where(g => g.LosesWrites), g => g.Registers);
        Aliases = Index(device.Aliases, a => [a.Source]);
        SharedWrites = Index(device.SharedWrites, s => s.Targets);
        Windows = device.Windows.ToDictionary(w => w.Window);
        SleepTriggers = device.Sleep.Trigger is { } trigger ? [.. trigger.Fields.Select(f => f.Register)] : [];
        SleepControls =
        [
            .. device
                .SleepModes.SelectMany(mode => mode.Selected.Fields)
                .Concat(device.Sleep.Enable.Fields)
                .Select(field => field.Register),
        ];
        if (device.Sleep.GlobalInterruptEnable is { Register: var mask })
        {
            SleepControls.Add(mask);
        }

        MaskedWrites = Index(device.MaskedWrites, m => [m.Trigger]);
        Resets = Index(device.Resets, r => [r.Trigger.Register]);
        Lookups = Index(device.Lookups, l => [l.Field.Register]);
        Followers = Index(device.FollowingFields, f => [f.Leader.Register]);
        var latched = device
            .Pins.SelectMany(p => p.Functions)
            .Where(f => f.Latched)
            .Select(f => f.When)
            .Distinct()
            .ToArray();
        Latched = Index(latched, c => c.Fields.Select(f => f.Register));
        AllLatched = latched;
        foreach (var register in device.Interrupts.SelectMany(i => i.Enabled.Fields).Select(f => f.Register))
        {
            InterruptEnables.Add(register);
        }

        if (device.Sleep.GlobalInterruptEnable is { } global)
        {
            InterruptEnables.Add(global.Register);
        }

        // What is written through an alias is its target.
        foreach (var alias in device.Aliases.Where(alias => InterruptEnables.Contains(alias.Target)).ToArray())
        {
            InterruptEnables.Add(alias.Source);
        }

        foreach (var reset in device.Resets.Where(reset => reset.Targets.Any(InterruptEnables.Contains)))
        {
            InterruptEnables.Add(reset.Trigger.Register);
        }

        foreach (var masked in device.MaskedWrites.Where(masked => masked.Targets.Any(InterruptEnables.Contains)))
        {
            InterruptEnables.Add(masked.Trigger);
        }
    }

    public DeviceModel Device { get; }

    public ulong HighestAddress { get; }

    public ILookup<Register, ChangeProtection> Protections { get; }

    public ILookup<Register, ChangeProtection> Keys { get; }

    public ILookup<Register, ClockGate> Gates { get; }

    public ILookup<Register, RegisterAlias> Aliases { get; }

    public ILookup<Register, SharedWrite> SharedWrites { get; }

    public ILookup<Register, MaskedWrite> MaskedWrites { get; }

    public ILookup<Register, FollowingField> Followers { get; }

    /// <summary>Resets by the register that holds the bit.</summary>
    public ILookup<Register, RegisterReset> Resets { get; }

    /// <summary>Lookups by the register whose bits they are.</summary>
    public ILookup<Register, FieldLookup> Lookups { get; }

    /// <summary>Windows on tables by the register that is the window.</summary>
    public IReadOnlyDictionary<Register, RegisterWindow> Windows { get; }

    /// <summary>Registers by whose write the part may go to sleep.</summary>
    public HashSet<Register> SleepTriggers { get; }

    /// <summary>Registers that enable and choose sleep, and let interrupts through.</summary>
    public HashSet<Register> SleepControls { get; }

    /// <summary>Latched conditions by a register that they look at.</summary>
    public ILookup<Register, Condition> Latched { get; }

    public IReadOnlyList<Condition> AllLatched { get; }

    /// <summary>Registers whose bits decide whether a handler may run.</summary>
    public HashSet<Register> InterruptEnables { get; } = [];

    public ulong AddressOf(Register register) => _addresses[register];

    public RegisterSlot? SlotAt(ulong address) => _slots.TryGetValue(address, out var slot) ? slot : null;

    public Register? Named(string name) => _byName.GetValueOrDefault(name);

    public RegisterByte InitialByte(ulong address)
    {
        if (SlotAt(address) is not { } slot)
        {
            return RegisterByte.Uniform(0, 0, DecisionSet.Reset);
        }

        var register = slot.Register;
        var known = register.ResetKnown & ~register.HardwareChanged;
        return RegisterByte.Uniform(slot.Take(known), slot.Take(register.Reset), DecisionSet.Reset);
    }

    private static ILookup<Register, T> Index<T>(IEnumerable<T> items, Func<T, IEnumerable<Register>> registersOf) =>
        items
            .SelectMany(item => registersOf(item).Distinct().Select(register => (register, item)))
            .ToLookup(pair => pair.register, pair => pair.item);
}
