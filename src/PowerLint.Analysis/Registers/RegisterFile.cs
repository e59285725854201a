using PowerLint.Devices;

namespace PowerLint.Analysis;

/// <summary>A register that a write had no effect on, and why.</summary>
internal readonly record struct LostBytes(
    LostWriteReason Reason,
    Register Register,
    ChangeProtection? Protection,
    ClockGate? Gate,
    Tristate Certainty
);

/// <summary>Reads and writes at absolute addresses, with the behaviour that the model gives the registers there.</summary>
internal sealed partial class RegisterFile(RegisterMap map, DecisionLog log)
{
    public RegisterMap Map { get; } = map;

    /// <summary>Told of every byte that is looked at or written; null where nobody asks.</summary>
    public Footprint? Watched { get; set; }

    public RegisterByte ByteAt(MachineState state, ulong address)
    {
        Watched?.Touch(address);
        return state.Registers.Find(address) ?? Map.InitialByte(address);
    }

    /// <summary>What a read of some bytes can give; remembers where the bits come from.</summary>
    public IntegerValue Read(MachineState state, ulong address, int width)
    {
        ulong known = 0;
        ulong value = 0;
        for (var i = 0; i < width; i++)
        {
            var (byteKnown, byteValue) = ReadByte(state, address + (ulong)i);
            known |= (ulong)byteKnown << (8 * i);
            value |= (ulong)byteValue << (8 * i);
        }

        var result = IntegerValue.Reduce(8 * width, known, value, 0, ulong.MaxValue)!;
        return result.WithOrigin(new RegisterOrigin(address, 8 * width, result.Mask));
    }

    /// <summary>The bits that a write of some bytes leaves there, before hardware changes any of them.</summary>
    /// <param name="state">The state, changed in place.</param>
    /// <param name="address">Lowest byte address.</param>
    /// <param name="width">Bytes written.</param>
    /// <param name="value">What is written.</param>
    /// <param name="isCertain">Whether the write happens at this address for sure.</param>
    /// <param name="decide">Makes the decision for the write, from the bits before and after.</param>
    /// <param name="lost">Told of every register that the write had no effect on.</param>
    public void Write(
        MachineState state,
        ulong address,
        int width,
        IntegerValue value,
        bool isCertain,
        Func<KnownBits, KnownBits, Decision> decide,
        Action<LostBytes> lost
    )
    {
        var before = Peek(state, address, width);
        var decision = decide(before, value.KnownBits);
        var decided = log.Single(decision);
        var origin = value.Origin is { } o && o.Address == address && o.Bits == 8 * width ? o.Mask : 0;
        var lockBefore = state.OpenLock;
        Span<Tristate> reached = width <= 16 ? stackalloc Tristate[width] : new Tristate[width];
        Register? current = null;
        var verdict = Tristate.Yes;
        var (open, isOpenForSure) = (ulong.MaxValue, true);

        // What a gate or a lock keeps out acts on no other register either.
        Span<(byte Open, bool IsSure)> taken = stackalloc (byte, bool)[width];
        for (var i = 0; i < width; i++)
        {
            var at = address + (ulong)i;
            var written = new KnownBits((value.Known >> (8 * i)) & 0xFF, (value.Value >> (8 * i)) & 0xFF);
            var keptMask = (byte)(origin >> (8 * i));
            if (Map.SlotAt(at) is not { } slot)
            {
                Store(state, at, written, keptMask, decided, isCertain);
                continue;
            }

            if (!ReferenceEquals(slot.Register, current))
            {
                current = slot.Register;
                var whole = Shifted(value.KnownBits, 8 * i, current.WidthBits, slot.Shift, width - i);
                verdict = GateVerdict(state, current, lost);
                var covered = Shifted(
                    new KnownBits(ulong.MaxValue, ulong.MaxValue),
                    8 * i,
                    current.WidthBits,
                    slot.Shift,
                    width - i
                );
                (open, isOpenForSure) = OpenMask(state, current, whole, covered.Known, lockBefore, lost);
            }

            reached[i] = verdict;
            if (verdict == Tristate.No)
            {
                continue;
            }

            var isSure = isCertain && verdict == Tristate.Yes && isOpenForSure;
            taken[i] = (slot.Take(open), isSure);
            if (Map.SharedWrites[current].FirstOrDefault() is { } shared)
            {
                StoreShared(state, shared, current, written, decided, isSure);
                continue;
            }

            StoreRegisterByte(state, slot, at, written, keptMask, decided, isSure, slot.Take(open));
        }

        if (lockBefore is { Protection: { Kind: ProtectionKind.TimedKey, WindowCycles: > 0 } })
        {
            // Any write to the I/O space ends the time that a key gives (XMEGA AU manual 8331, section 3.14, from memory).
            state.OpenLock = null;
        }

        // Effects on other registers, and locks that this write opens, come after the write itself.
        for (var i = 0; i < width; i++)
        {
            if (Map.SlotAt(address + (ulong)i) is { } slot && reached[i] != Tristate.No)
            {
                var written = new KnownBits((value.Known >> (8 * i)) & 0xFF, (value.Value >> (8 * i)) & 0xFF);
                ApplyAliases(state, slot, written, decided, taken[i]);
                ApplyMaskedWrites(state, slot, written, decided, taken[i].IsSure);
                ApplyResets(state, slot, written, decided, taken[i].IsSure);
                if (i == 0 || slot.ByteIndex == 0)
                {
                    ApplyWindow(state, slot, width - i, decided, isCertain);
                    ApplyFollowers(state, slot.Register);
                    OpenLocks(
                        state,
                        slot.Register,
                        Shifted(value.KnownBits, 8 * i, slot.Register.WidthBits, slot.Shift, width - i)
                    );
                }
            }
        }
    }

    /// <summary>Writes a register of the CPU, as an instruction does: the bits of the mask are decided anew.</summary>
    public void SetCore(MachineState state, Register register, KnownBits written, ulong mask, DecisionSet decided)
    {
        for (var i = 0; i < register.WidthBits / 8; i++)
        {
            var slot = new RegisterSlot(register, i);
            StoreRegisterByte(
                state,
                slot,
                Map.AddressOf(register) + (ulong)i,
                new KnownBits((written.Known >> (8 * i)) & 0xFF, (written.Value >> (8 * i)) & 0xFF),
                (byte)~slot.Take(mask),
                decided,
                isCertain: true,
                slot.Take(mask)
            );
        }
    }

    /// <summary>Copies a register's bytes to another place, with what decided them.</summary>
    public void Copy(MachineState state, ulong from, ulong to, int bytes)
    {
        for (var i = 0; i < bytes; i++)
        {
            Watched?.Touch(to + (ulong)i);
            state.Registers = state.Registers.Set(to + (ulong)i, ByteAt(state, from + (ulong)i));
        }
    }

    /// <summary>Puts a known value where no register lies.</summary>
    public void Note(MachineState state, ulong address, int bytes, ulong value)
    {
        for (var i = 0; i < bytes; i++)
        {
            Watched?.Touch(address + (ulong)i);
            state.Registers = state.Registers.Set(
                address + (ulong)i,
                RegisterByte.Uniform(byte.MaxValue, (byte)(value >> (8 * i)), DecisionSet.Reset)
            );
        }
    }

    /// <summary>Sets or clears one bit as an instruction of the core does (the global interrupt enable).</summary>
    public void SetBit(MachineState state, FieldReference bit, bool isOne, DecisionSet decided)
    {
        var address = Map.AddressOf(bit.Register) + (ulong)(bit.LowBit / 8);
        var mask = (byte)(1 << (bit.LowBit % 8));
        var old = ByteAt(state, address);
        state.Registers = state.Registers.Set(
            address,
            old.With((byte)(old.Known | mask), (byte)(isOne ? old.Value | mask : old.Value & ~mask), mask, decided)
        );
    }

    /// <summary>Takes it as known that a bit has a value, as on one side of a test; who decided it stays.</summary>
    public void Assume(MachineState state, FieldReference bit, bool isOne)
    {
        var address = Map.AddressOf(bit.Register) + (ulong)(bit.LowBit / 8);
        var mask = (byte)(1 << (bit.LowBit % 8));
        var old = ByteAt(state, address);
        state.Registers = state.Registers.Set(
            address,
            old.With(
                (byte)(old.Known | mask),
                (byte)(isOne ? old.Value | mask : old.Value & ~mask),
                0,
                DecisionSet.Reset
            )
        );
    }

    /// <summary>The bits as they stand, hardware-changed ones unknown.</summary>
    public KnownBits Peek(MachineState state, ulong address, int width)
    {
        ulong known = 0;
        ulong value = 0;
        for (var i = 0; i < Math.Min(width, 8); i++)
        {
            var at = ByteAt(state, address + (ulong)i);
            known |= (ulong)at.Known << (8 * i);
            value |= (ulong)at.Value << (8 * i);
        }

        return new KnownBits(known, value);
    }

    public KnownBits Read(MachineState state, Register register) =>
        Peek(state, Map.AddressOf(register), register.WidthBits / 8);

    public PersistentMap<RegisterByte> Join(MachineState a, MachineState b) =>
        PersistentMap<RegisterByte>.Merge(
            a.Registers,
            b.Registers,
            (address, inA, inB) =>
                RegisterByte.Join(inA ?? Map.InitialByte(address), inB ?? Map.InitialByte(address), log)
        );

    public bool IsIncluded(MachineState a, MachineState b) =>
        PersistentMap<RegisterByte>.AllDifferences(
            a.Registers,
            b.Registers,
            (address, inA, inB) =>
                RegisterByte.IsIncluded(inA ?? Map.InitialByte(address), inB ?? Map.InitialByte(address), log)
        );

    private (byte Known, byte Value) ReadByte(MachineState state, ulong address)
    {
        if (Map.SlotAt(address) is not { } slot)
        {
            var plain = ByteAt(state, address);

            // Among the registers, an address that the model does not name may be a flag or a port: a read tells nothing.
            return address <= Map.HighestAddress ? ((byte)0, (byte)0) : (plain.Known, plain.Value);
        }

        foreach (var alias in Map.Aliases[slot.Register])
        {
            if (alias.ReadsTarget)
            {
                var target = ByteAt(state, Map.AddressOf(alias.Target) + (ulong)slot.ByteIndex);
                return (target.Known, target.Value);
            }
        }

        var at = ByteAt(state, address);
        var zero = slot.Take(slot.Register.ReadsZero);
        var fixedBits = slot.Take(slot.Register.ReadsAs);
        return (
            (byte)((at.Known & ~slot.Take(slot.Register.HardwareChanged)) | zero | fixedBits),
            (byte)((at.Value & ~zero & ~fixedBits) | (slot.Take(slot.Register.ReadsAsValue) & fixedBits))
        );
    }

    // A write to one of these registers reaches those whose bit is set in the mask; where no bit is, only the one addressed.
    private void StoreShared(
        MachineState state,
        SharedWrite shared,
        Register addressed,
        KnownBits written,
        DecisionSet decided,
        bool isCertain
    )
    {
        var maskAddress = Map.AddressOf(shared.Mask);
        var mask = ByteAt(state, maskAddress);
        for (var n = 0; n < shared.Targets.Length && n < 8; n++)
        {
            var target = shared.Targets[n];
            var reached = Reaches(mask, n, ReferenceEquals(target, addressed));
            if (reached == Tristate.No)
            {
                continue;
            }

            var address = Map.AddressOf(target);
            StoreRegisterByte(
                state,
                new RegisterSlot(target, 0),
                address,
                written,
                0,
                decided,
                isCertain && reached == Tristate.Yes,
                byte.MaxValue
            );
        }

        // The mask holds for one write.
        Put(state, maskAddress, mask, mask.With(byte.MaxValue, 0, byte.MaxValue, decided), isCertain);
    }

    private static Tristate Reaches(RegisterByte mask, int bit, bool isAddressed)
    {
        var isKnown = (mask.Known >> bit & 1) != 0;
        var isSet = (mask.Value >> bit & 1) != 0;
        if (isKnown && isSet)
        {
            return Tristate.Yes;
        }

        if (!isAddressed)
        {
            return isKnown ? Tristate.No : Tristate.Maybe;
        }

        // The register addressed is also reached where the mask is 0.
        var cannotBeZero = (mask.Known & mask.Value) != 0;
        var isZero = mask.Known == byte.MaxValue && mask.Value == 0;
        return isZero ? Tristate.Yes
            : cannotBeZero && isKnown ? Tristate.No
            : Tristate.Maybe;
    }

    private void StoreRegisterByte(
        MachineState state,
        RegisterSlot slot,
        ulong address,
        KnownBits written,
        byte keptMask,
        DecisionSet decided,
        bool isCertain,
        byte openMask
    )
    {
        var register = slot.Register;
        var old = ByteAt(state, address);
        var zero = slot.Take(register.ReadsZero);
        var fixedMask = (byte)(slot.Take(register.ReadOnly) | ~openMask);
        var (newKnown, newValue, left) = WriteEffects.Stored(slot, written, old);
        newKnown = (byte)((newKnown & ~fixedMask) | (old.Known & fixedMask));
        newValue = (byte)((newValue & ~fixedMask) | (old.Value & fixedMask));
        newKnown = (byte)((newKnown | zero) & ~slot.Take(register.HardwareChanged));
        newValue = (byte)(newValue & ~zero & newKnown);
        var decidedMask = (byte)(~keptMask & ~fixedMask & ~left);
        var next = old.With(newKnown, newValue, decidedMask, decided);
        Put(state, address, old, next, isCertain);
    }

    private void Store(
        MachineState state,
        ulong address,
        KnownBits written,
        byte keptMask,
        DecisionSet decided,
        bool isCertain
    )
    {
        var old = ByteAt(state, address);
        Put(
            state,
            address,
            old,
            old.With((byte)written.Known, (byte)written.Value, (byte)~keptMask, decided),
            isCertain
        );
    }

    private void Put(MachineState state, ulong address, RegisterByte old, RegisterByte next, bool isCertain)
    {
        if (!isCertain)
        {
            next = RegisterByte.Join(old, next, log);
        }

        if (!ReferenceEquals(old, next))
        {
            state.Registers = state.Registers.Set(address, next);
        }
    }

    private Tristate GateVerdict(MachineState state, Register register, Action<LostBytes> lost)
    {
        var verdict = Tristate.Yes;
        foreach (var gate in Map.Gates[register])
        {
            var open = Evaluate(state, gate.Open);
            if (open != Tristate.Yes)
            {
                verdict = verdict == Tristate.No ? Tristate.No : open;
                if (open == Tristate.No)
                {
                    lost(new LostBytes(LostWriteReason.Gated, register, null, gate, Tristate.Yes));
                }
            }
        }

        return verdict;
    }

    // A register without fields is taken to be one, as wide as it is.
    private static bool IsWhole(Register register, ulong mask) =>
        (
            (
                register.Fields.Count == 0
                    ? IntegerValue.MaskOf(register.WidthBits)
                    : register.Fields.Values.Aggregate(
                        0UL,
                        (all, field) =>
                            all | new FieldReference(register, field.LowBit, field.WidthBits, field.Name).Mask
                    )
            )
            & ~mask
            & ~register.ReadsZero
            & ~register.ReadOnly
        ) == 0;

    // The bits of a register that this write may change, given what is locked.
    private (ulong Open, bool IsCertain) OpenMask(
        MachineState state,
        Register register,
        KnownBits written,
        ulong covered,
        OpenLock? openLock,
        Action<LostBytes> lost
    )
    {
        var open = ulong.MaxValue;
        var isCertain = true;
        foreach (var protection in Map.Protections[register])
        {
            var mask = ProtectedMask(protection, register);
            if ((mask & covered) == 0)
            {
                // A narrow write that leaves the protected bits alone.
                continue;
            }

            if (ProtectionRules.IsOpen(protection, register, written, covered, openLock, c => Evaluate(state, c)))
            {
                if (openLock is { IsCertain: false } && ProtectionRules.HaveOneKey(openLock.Protection, protection))
                {
                    isCertain = false;
                    lost(new LostBytes(LostWriteReason.Locked, register, protection, null, Tristate.Maybe));
                }

                continue;
            }

            open &= ~mask;
            var before = Read(state, register);
            if (protection.WrongKeyResets)
            {
                // A slip is reported and looked past, so that what lies behind it is checked, too.
                if (ProtectionRules.IsForgottenKey(protection, register, mask, written))
                {
                    lost(new LostBytes(LostWriteReason.Locked, register, protection, null, Tristate.Yes));
                }
                else
                {
                    state.IsReset = true;
                }

                continue;
            }

            if (ProtectionRules.LosesSomething(protection, mask, IsWhole(register, mask), before, written))
            {
                lost(new LostBytes(LostWriteReason.Locked, register, protection, null, Tristate.Yes));
            }
            else if (protection.SettingNeedsNoKey)
            {
                open |= mask & written.Value;
            }
        }

        return (open, isCertain);
    }

    private static ulong ProtectedMask(ChangeProtection protection, Register register)
    {
        ulong mask = 0;
        foreach (var field in protection.Protects)
        {
            mask |= ReferenceEquals(field.Register, register) ? field.Mask : 0;
        }

        return mask;
    }

    private void OpenLocks(MachineState state, Register register, KnownBits written)
    {
        foreach (var protection in Map.Keys[register])
        {
            state.OpenLock = ProtectionRules.AfterKeyWrite(protection, written, state.OpenLock);
        }
    }

    private void ApplyAliases(
        MachineState state,
        RegisterSlot slot,
        KnownBits written,
        DecisionSet decided,
        (byte Open, bool IsSure) taken
    )
    {
        foreach (var alias in Map.Aliases[slot.Register])
        {
            var take = slot.Take(alias.SourceMask) & taken.Open;
            var acts = take == 0 ? Tristate.No : Evaluate(state, alias.When);
            if (acts == Tristate.No)
            {
                continue;
            }

            for (var bit = 0; bit < 8; bit++)
            {
                var sourceMask = 1 << bit;
                if (
                    (take & sourceMask) == 0
                    || ((written.Known & ~written.Value) & (ulong)sourceMask) != 0 && alias.Effect != AliasEffect.Same
                )
                {
                    continue;
                }

                var targetBit = (8 * slot.ByteIndex) + bit + alias.TargetShift;
                if (targetBit < 0 || targetBit >= alias.Target.WidthBits)
                {
                    continue;
                }

                var isOne = (written.Value & (ulong)sourceMask) != 0;
                var isKnown = (written.Known & (ulong)sourceMask) != 0;
                ApplyAliasBit(state, alias, targetBit, isOne, isKnown, decided, taken.IsSure && acts == Tristate.Yes);
            }

            ApplyFollowers(state, alias.Target);
        }
    }

    private void ApplyAliasBit(
        MachineState state,
        RegisterAlias alias,
        int targetBit,
        bool isOne,
        bool isKnown,
        DecisionSet decided,
        bool isCertain
    )
    {
        var address = Map.AddressOf(alias.Target) + (ulong)(targetBit / 8);
        var mask = (byte)(1 << (targetBit % 8));
        var old = ByteAt(state, address);
        var (known, value) = alias.Effect switch
        {
            AliasEffect.Set => ((byte)(old.Known | mask), (byte)(old.Value | mask)),
            AliasEffect.Clear => ((byte)(old.Known | mask), (byte)(old.Value & ~mask)),
            AliasEffect.Toggle => (old.Known, (byte)(old.Value ^ mask)),
            _ => (
                (byte)(isKnown ? old.Known | mask : old.Known & ~mask),
                (byte)(isOne ? old.Value | mask : old.Value & ~mask)
            ),
        };
        var next = old.With(known, value, mask, decided);
        Put(state, address, old, next, isCertain && (isKnown || alias.Effect == AliasEffect.Same));
    }

    private void ApplyFollowers(MachineState state, Register register)
    {
        foreach (var following in Map.Followers[register])
        {
            for (var i = 0; i < following.Leader.WidthBits; i++)
            {
                var from = following.Leader.LowBit + i;
                var leader = ByteAt(state, Map.AddressOf(register) + (ulong)(from / 8));
                var to = following.Follower.LowBit + i;
                var address = Map.AddressOf(following.Follower.Register) + (ulong)(to / 8);
                var mask = (byte)(1 << (to % 8));
                var old = ByteAt(state, address);
                var isKnown = (leader.Known >> (from % 8) & 1) != 0;
                var next = old.With(
                    (byte)(isKnown ? old.Known | mask : old.Known & ~mask),
                    (byte)((leader.Value >> (from % 8) & 1) != 0 ? old.Value | mask : old.Value & ~mask),
                    mask,
                    leader.DecidedBy(from % 8)
                );
                Put(state, address, old, next, isCertain: true);
            }
        }
    }

    public Tristate Evaluate(MachineState state, Condition condition) =>
        new RegisterView(this, state).Evaluate(condition);

    // The part of a written value that falls on a register, as bits of that register; the rest is not written.
    private static KnownBits Shifted(KnownBits value, int fromBit, int registerBits, int toBit, int bytes)
    {
        var mask = IntegerValue.MaskOf(Math.Min(registerBits - toBit, 8 * bytes));
        return new KnownBits(((value.Known >> fromBit) & mask) << toBit, ((value.Value >> fromBit) & mask) << toBit);
    }
}
