using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    private void NoteRegisterRead(ulong address, int width, ulong demanded)
    {
        for (var i = 0; i < width; i++)
        {
            if (IsInHandler)
            {
                _handlerAddresses.Add(address + (ulong)i);
            }

            if (_map.SlotAt(address + (ulong)i) is not { } slot)
            {
                continue;
            }

            var mask = ((demanded >> (8 * i)) & 0xFF) << slot.Shift;
            Events.NoteRead(slot.Register, mask);
            if ((slot.Register.HardwareChanged & mask) != 0)
            {
                _volatileReads.Add((slot.Register, slot.Register.HardwareChanged & mask));
                if (_reads is { } reads && !IsInHandler)
                {
                    reads.ReadsHardware = true;
                }
            }

            if (slot.Register.Kind == RegisterKind.Data)
            {
                Events.Touched.Add(slot.Register);
            }
        }
    }

    private void NoteLostWrite(LostBytes lost, Decision decision) =>
        Events.LostWrites.TryAdd(
            (lost.Reason, lost.Register, decision),
            new LostWrite(lost.Reason, lost.Register, decision, lost.Protection, lost.Gate, lost.Certainty)
        );

    // The same place may be reached with the lock open and with it closed: then its loss is not proven.
    private void NoteEffectiveWrite(ulong address, int width, HashSet<Devices.Register>? losing, Decision decision)
    {
        for (var i = 0; i < width; i++)
        {
            if (
                _map.SlotAt(address + (ulong)i) is { } slot
                && (_map.Protections.Contains(slot.Register) || _map.Gates.Contains(slot.Register))
                && losing?.Contains(slot.Register) != true
            )
            {
                Events.EffectiveWrites.Add((slot.Register, decision.Range));
            }
        }
    }

    private void NoteRegisterWrite(ulong address, int width, IntegerValue value, Decision decision, MachineState state)
    {
        for (var i = 0; i < width; i++)
        {
            var at = address + (ulong)i;
            NoteSharedPlace(at, state);
            if (_map.SlotAt(at) is not { } slot)
            {
                continue;
            }

            foreach (var alias in _map.Aliases[slot.Register])
            {
                // What is written through an alias is its target.
                for (var part = 0; part < alias.Target.WidthBits / 8; part++)
                {
                    NoteSharedPlace(_map.AddressOf(alias.Target) + (ulong)part, state);
                }
            }

            Events.Touched.Add(slot.Register);
            NoteChange(slot, decision, i);
            NoteFlagClears(slot, value, i);
            if (_map.InterruptEnables.Contains(slot.Register))
            {
                state.NeedsInterleaving = true;
            }

            if (slot.ByteIndex == 0 || i == 0)
            {
                var written = new KnownBits(
                    (value.Known >> (8 * i)) << slot.Shift,
                    (value.Value >> (8 * i)) << slot.Shift
                );
                NoteLatched(state, slot.Register, WithoutEchoes(written, slot, address, width, value), decision);
            }
        }
    }

    private void NoteChange(RegisterSlot slot, Decision decision, int index)
    {
        if (slot.Register.Kind != RegisterKind.Configuration)
        {
            return;
        }

        var known = decision.Before.Known & decision.After.Known;
        var changed = (((decision.Before.Value ^ decision.After.Value) | ~known) >> (8 * index)) & 0xFF;
        if (changed != 0)
        {
            var key = (slot.Register, decision.Range, Now.Context == RunContext.StartUp);
            Events.Changes[key] = Events.Changes.GetValueOrDefault(key) | (changed << slot.Shift);
        }
    }

    // A flag that ones clear is cleared by a bit that may be one, any other by one that may be zero.
    private void NoteFlagClears(RegisterSlot slot, IntegerValue value, int index)
    {
        var aliased = _map.Aliases[slot.Register]
            .Where(alias => alias.Effect == AliasEffect.Same)
            .Select(a => a.Target);
        foreach (var register in aliased.Prepend(slot.Register).Where(register => register.HardwareChanged != 0))
        {
            var ones = ((value.Value | ~value.Known) >> (8 * index)) & 0xFF;
            var zeros = ~(value.Value >> (8 * index)) & 0xFF;
            var cleared =
                ((ones << slot.Shift) & register.WriteOneToClear) | ((zeros << slot.Shift) & ~register.WriteOneToClear);
            if ((cleared & register.HardwareChanged) is not 0 and var mask)
            {
                Events.FlagClears.Add((register, mask, Now));
            }
        }
    }

    private void NoteSharedPlace(ulong address, MachineState state)
    {
        if (IsInHandler)
        {
            _handlerAddresses.Add(address);
        }
        else if (_handlersSleep || _handlerAddresses.Contains(address))
        {
            state.NeedsInterleaving = true;
        }
    }

    // A strobe that is read as unknown and written back as read starts nothing: it counts as not written.
    private static KnownBits WithoutEchoes(
        KnownBits written,
        RegisterSlot slot,
        ulong address,
        int width,
        IntegerValue value
    )
    {
        if (value.Origin is not { } origin || origin.Address != address || origin.Bits != 8 * width)
        {
            return written;
        }

        var echoes = (origin.Mask << slot.Shift) & slot.Register.HardwareChanged & ~written.Known;
        return new KnownBits(written.Known | echoes, written.Value);
    }

    private void NoteLatched(MachineState state, Register? register, KnownBits written, Decision? decision)
    {
        var conditions = register is null ? _map.AllLatched : _map.Latched[register];
        RegisterView? view = null;
        foreach (var condition in conditions)
        {
            view ??= new RegisterView(_registers, state)
            {
                JustWritten = register is null ? null : (register, written),
                StrobesAreZero = true,
            };
            var held = view.Evaluate(condition);
            if (held == Tristate.No)
            {
                continue;
            }

            var (before, decisions) = Events.Latched.GetValueOrDefault(condition, (Tristate.No, []));
            if (decision is not null)
            {
                // All writes that the condition rests on, not only the last: a channel may be chosen long before the converter
                // is switched on.
                decisions.AddRange(
                    view.DecisionsOf(condition).Append(decision).Where(each => !decisions.Contains(each)).Distinct()
                );
            }

            Events.Latched[condition] = (before == Tristate.Yes ? before : held, decisions);
        }
    }

    // Timed locks close by themselves; the count is the least that the access can take, so that only a sure loss is a loss:
    // one cycle in the I/O space that short instructions reach, two elsewhere (AVR instruction set, from memory).
    private static void SpendCycles(MachineState state, ulong address, int width) =>
        SpendCycles(state, (address < 0x60 ? 1 : 2) * width);

    private static void SpendCycles(MachineState state, long cycles)
    {
        if (state.OpenLock is { Protection.WindowCycles: > 0 } open)
        {
            state.OpenLock = open with { CyclesLeft = (int)Math.Max(-1, open.CyclesLeft - cycles) };
        }
    }

    private void NoteAccess(Region region)
    {
        if (IsInHandler && region.Global is not null)
        {
            _handlerRegions.Add(region);
        }
    }

    private void NoteStore(Region region, MachineState state, bool isWork = true)
    {
        NoteAccess(region);
        if (region.Global is not null)
        {
            ForgetTestsOf(region, state);
            NoteEffect(state, isWork);
            if (!IsInHandler && _handlerRegions.Contains(region))
            {
                state.NeedsInterleaving = true;
            }
        }
        else if (!IsInHandler && _handlerRegions.Contains(region))
        {
            state.NeedsInterleaving = true;
        }
    }
}
