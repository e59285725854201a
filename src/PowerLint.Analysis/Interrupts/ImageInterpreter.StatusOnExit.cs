using System.Numerics;
using PowerLint.Devices;

namespace PowerLint.Analysis;

/// <summary>
/// What a handler does to the status register that its return puts back, over all its ways together. A handler that clears some
/// bits on one way and none on another leaves them unknown; yet if each of its changes clears the bit that stops the CPU, then
/// where the CPU sleeps on nothing was changed at all, and where it goes on, the others that each clears are clear, too.
/// </summary>
internal sealed partial class ImageInterpreter
{
    // The bits that every change so far has cleared lie behind the saved register, so that they join and replay as it does.
    private const int ClearedOffset = 4;

    private ulong _clearedAtReturn;

    private void StartCleared(MachineState state, Register status) =>
        _registers.Note(state, ClearedBits(), status.WidthBits / 8, ulong.MaxValue);

    private void NarrowCleared(MachineState state, Register status, StatusChange change, KnownBits operand)
    {
        var bytes = status.WidthBits / 8;
        var before = _registers.Peek(state, ClearedBits(), bytes);
        var by = change == StatusChange.Clear ? operand.Known & operand.Value : 0;
        _registers.Note(state, ClearedBits(), bytes, before.Known & before.Value & by);
    }

    private void EndCleared(MachineState state, Register status)
    {
        var bytes = status.WidthBits / 8;
        var cleared = _registers.Peek(state, ClearedBits(), bytes);
        _clearedAtReturn = cleared.Known & cleared.Value;
        Forget(state, ClearedBits(), bytes);
    }

    private ulong ClearedBits() => SavedStatus(_activeHandlers.Count) + ClearedOffset;

    /// <summary>
    /// The state after a handler that has interrupted a sleep, on the ways that go on or on those that sleep on.
    /// <paramref name="cleared"/> are the bits of the status register that each of its changes clears.
    /// </summary>
    private MachineState Returned(MachineState asleep, MachineState returned, ulong cleared, bool isAsleep)
    {
        var state = Assuming(returned, isAsleep);
        if (
            _device.Sleep is not { StatusRegister: { } status, StopsCpu: { } stop }
            || (cleared & stop.Mask) == 0
            || Holds(returned, IsOne(stop)) != Tristate.Maybe
        )
        {
            return state;
        }

        var address = _map.AddressOf(status);
        for (var i = 0; isAsleep && i < status.WidthBits / 8; i++)
        {
            state.Registers = state.Registers.Set(address + (ulong)i, _registers.ByteAt(asleep, address + (ulong)i));
        }

        if (isAsleep && _device.Sleep.GlobalInterruptEnable is { } enable && enable.Register == status)
        {
            _registers.Assume(state, enable, isOne: true);
        }

        for (var left = isAsleep ? 0 : cleared & IntegerValue.MaskOf(status.WidthBits); left != 0; left &= left - 1)
        {
            var bit = BitOperations.TrailingZeroCount(left);
            _registers.Assume(state, new FieldReference(status, bit, 1, status.Name), isOne: false);
        }

        return state;
    }
}
