using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>
/// Cores that sleep by a bit of their status register. A handler starts with the register cleared and what it was on the stack;
/// its return puts that back, so that the CPU sleeps on unless the handler has changed what lies there.
/// </summary>
internal sealed partial class ImageInterpreter
{
    private const int SavedStatusStride = 8;

    /// <summary>What instructions do to the bits of the status register.</summary>
    private enum StatusChange
    {
        Set,
        Clear,
        Load,
    }

    /// <summary>Changes the status register; where that stops the CPU, sleeps. Null where nothing goes on.</summary>
    private MachineState? ChangeStatus(
        StatusChange change,
        AbstractValue operand,
        MachineState state,
        object node,
        SourceRange range
    )
    {
        if (_device.Sleep is not { StatusRegister: { } status, StopsCpu: { } stop })
        {
            return state;
        }

        // What is pending under the old enable comes before; what the new one lets in comes in the sleep, or after.
        if (LetHandlersIn(state) is not { } before)
        {
            return null;
        }

        state = before.Copy();
        WriteStatus(change, operand, status, _map.AddressOf(status), state, node, range);
        var stopped = Holds(state, IsOne(stop));
        if (stopped == Tristate.No)
        {
            state.NeedsInterleaving |= InterruptsOn(state) != Tristate.No;
            return LetHandlersIn(state);
        }

        MachineState? running = null;
        if (stopped == Tristate.Maybe)
        {
            running = state.Copy();
            _registers.Assume(running, stop, isOne: false);
            running.NeedsInterleaving = true;
            running = LetHandlersIn(running);
            _registers.Assume(state, stop, isOne: true);
        }

        // One instruction lets interrupts in and stops the CPU: none comes between.
        state.NeedsInterleaving = false;
        state.IsShielded = true;
        var awake = ExecuteSleep(node, range, state);
        if (awake is not null)
        {
            awake.IsShielded = false;
        }

        return Join(running, awake);
    }

    /// <summary>Changes what the return of the handler that is running will put into the status register.</summary>
    private void ChangeStatusOnExit(
        StatusChange change,
        AbstractValue operand,
        MachineState state,
        object node,
        SourceRange range
    )
    {
        if (_device.Sleep.StatusRegister is { } status && _activeHandlers.Count > 0)
        {
            NarrowCleared(state, status, change, StatusBits(operand, status));
            WriteStatus(change, operand, status, SavedStatus(_activeHandlers.Count), state, node, range);
        }
    }

    private IntegerValue ReadStatus(MachineState state) =>
        _device.Sleep.StatusRegister is { } status
            ? _registers.Read(state, _map.AddressOf(status), status.WidthBits / 8).WithOrigin(null)
            : IntegerValue.Unknown(_image.Target.IntBits);

    private IntegerValue ReadStatusOnExit(MachineState state) =>
        _device.Sleep.StatusRegister is { } status && _activeHandlers.Count > 0
            ? _registers.Read(state, SavedStatus(_activeHandlers.Count), status.WidthBits / 8).WithOrigin(null)
            : IntegerValue.Unknown(_image.Target.IntBits);

    private static Condition IsOne(FieldReference bit) =>
        new([
            [new FieldCondition(bit, [1])],
        ]);

    private static ulong SavedStatus(int nesting) => RegisterMap.SavedStatusBase + (ulong)(nesting * SavedStatusStride);

    private static KnownBits StatusBits(AbstractValue operand, Register status) =>
        operand is IntegerValue integer
            ? IntegerArithmetic.Convert(integer, status.WidthBits, sourceIsSigned: false).KnownBits
            : KnownBits.Unknown;

    private void WriteStatus(
        StatusChange change,
        AbstractValue operand,
        Register status,
        ulong address,
        MachineState state,
        object node,
        SourceRange range
    )
    {
        _effects++;
        var all = IntegerValue.MaskOf(status.WidthBits);
        var value = StatusBits(operand, status);
        var before = _registers.Peek(state, address, status.WidthBits / 8);

        // Bits of the operand that may be one; those that are for sure.
        var maybe = change == StatusChange.Load ? all : (value.Value | ~value.Known) & all;
        var sure = value.Known & value.Value & all;
        var after = change switch
        {
            StatusChange.Set => new KnownBits(
                (before.Known & ~maybe) | sure | (before.Known & before.Value),
                before.Value | sure
            ),
            StatusChange.Clear => new KnownBits(
                (before.Known & ~maybe) | sure | (before.Known & ~before.Value),
                before.Value & ~sure
            ),
            _ => new KnownBits(value.Known & all, value.Value & all),
        };
        var bytes = status.WidthBits / 8;
        var decision = Decide(node, range, _map.AddressOf(status), bytes, before, after);
        if (address == _map.AddressOf(status))
        {
            _registers.SetCore(state, status, after, maybe, _log.Single(decision));
            return;
        }

        // The copy on the stack is written like the register, whose place it takes for the moment.
        var running = _map.AddressOf(status);
        var aside = SavedStatus(0);
        _registers.Copy(state, running, aside, bytes);
        _registers.Copy(state, address, running, bytes);
        _registers.SetCore(state, status, after, maybe, _log.Single(decision));
        _registers.Copy(state, running, address, bytes);
        _registers.Copy(state, aside, running, bytes);
        Forget(state, aside, bytes);
    }

    /// <summary>At a handler's entry: saves and clears the status register.</summary>
    private void EnterWithStatus(MachineState state, Function handler, Register status)
    {
        if (_device.Sleep.GlobalInterruptEnable is { } enable && enable.Register == status)
        {
            // It would not run otherwise.
            _registers.Assume(state, enable, isOne: true);
        }

        var bytes = status.WidthBits / 8;
        _registers.Copy(state, _map.AddressOf(status), SavedStatus(_activeHandlers.Count), bytes);
        StartCleared(state, status);
        var all = IntegerValue.MaskOf(status.WidthBits);
        var before = _registers.Read(state, status);
        var decision = Decide(handler, handler.Range, _map.AddressOf(status), bytes, before, new KnownBits(all, 0));
        _registers.SetCore(state, status, new KnownBits(all, 0), all, _log.Single(decision));
    }

    /// <summary>At a handler's return: puts back what lies on the stack.</summary>
    private void LeaveWithStatus(MachineState state, Register status)
    {
        var bytes = status.WidthBits / 8;
        var saved = SavedStatus(_activeHandlers.Count);
        _registers.Copy(state, saved, _map.AddressOf(status), bytes);
        Forget(state, saved, bytes);
        EndCleared(state, status);
    }

    private static void Forget(MachineState state, ulong address, int bytes)
    {
        for (var i = 0; i < bytes; i++)
        {
            state.Registers = state.Registers.Remove(address + (ulong)i);
        }
    }
}
