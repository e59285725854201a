using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    // What the compilers' own sleep functions set: CPUOFF, OSCOFF, SCG0 and SCG1 by mode, and GIE with them (MSP430 compiler
    // user's guide SLAU132, table of intrinsics, from memory).
    private static readonly ulong[] s_lowPowerModes = [0x18, 0x58, 0x98, 0xD8, 0xF8];

    // CPUOFF, OSCOFF, SCG0 and SCG1.
    private const ulong AllModeBits = 0xF0;

    /// <summary>The names that toolchains give to instructions on the status register.</summary>
    private AbstractValue? CallStatusIntrinsic(string name, AbstractValue[] arguments, Call call, MachineState state)
    {
        var operand = arguments is [var first, ..] ? first : IntegerValue.Constant(_image.Target.IntBits, AllModeBits);
        switch (name)
        {
            case "__bis_SR_register" or "_bis_SR_register" or "__bis_status_register" or "_BIS_SR":
                return Change(StatusChange.Set, operand);
            case "__bic_SR_register" or "_bic_SR_register" or "__bic_status_register" or "_BIC_SR":
                return Change(StatusChange.Clear, operand);
            case "__set_interrupt_state"
            or "_set_interrupt_state"
            or "__restore_interrupt"
            or "__write_status_register":
                return Change(StatusChange.Load, operand);
            case "__bis_SR_register_on_exit"
            or "_bis_SR_register_on_exit"
            or "__bis_status_register_on_exit"
            or "_BIS_SR_IRQ":
                ChangeStatusOnExit(StatusChange.Set, operand, state, call, call.Range);
                return AnyValue.Instance;
            case "__bic_SR_register_on_exit"
            or "_bic_SR_register_on_exit"
            or "__bic_status_register_on_exit"
            or "_BIC_SR_IRQ"
            or "__low_power_mode_off_on_exit"
            or "_low_power_mode_off_on_exit":
                ChangeStatusOnExit(StatusChange.Clear, operand, state, call, call.Range);
                return AnyValue.Instance;
            case "__get_SR_register"
            or "_get_SR_register"
            or "__get_interrupt_state"
            or "_get_interrupt_state"
            or "__read_status_register":
                return ReadStatus(state);
            case "__get_SR_register_on_exit" or "_get_SR_register_on_exit":
                return ReadStatusOnExit(state);
            case "__even_in_range" or "_even_in_range" when arguments is [IntegerValue value, var last]:
                return EvenInRange(value, last);
            case "__swap_bytes" or "_swap_bytes" when arguments is [IntegerValue { Bits: 16 } word]:
                return IntegerArithmetic.Apply(
                    BinaryOperator.Or,
                    IntegerArithmetic.Apply(BinaryOperator.ShiftLeft, word, IntegerValue.Constant(16, 8), false),
                    IntegerArithmetic.Apply(BinaryOperator.ShiftRight, word, IntegerValue.Constant(16, 8), false),
                    isSigned: false
                );
            case "__watchdog_clear"
            or "__set_watchdog_clear_value"
            or "__op_code"
            or "__set_SP_register"
            or "__write_stack_pointer":
                return AnyValue.Instance;
            case "__get_SP_register"
            or "__read_stack_pointer"
            or "__get_watchdog_clear_value"
            or "__bcd_add_short"
            or "__bcd_add_long":
                return UnknownOf(call.Type);
            default:
                return LowPowerMode(name) is { } bits
                    ? Change(StatusChange.Set, IntegerValue.Constant(_image.Target.IntBits, bits))
                    : null;
        }

        AbstractValue Change(StatusChange change, AbstractValue value)
        {
            state.Become(ChangeStatus(change, value, state.Copy(), call, call.Range));
            return AnyValue.Instance;
        }
    }

    private static ulong? LowPowerMode(string name)
    {
        const string prefix = "low_power_mode_";
        var plain = name.TrimStart('_');
        return
            plain.Length == prefix.Length + 1
            && plain.StartsWith(prefix, StringComparison.Ordinal)
            && plain[^1] is >= '0' and <= '4'
            ? s_lowPowerModes[plain[^1] - '0']
            : null;
    }

    // A promise of the program's: the value is even and no larger than the second argument.
    private static IntegerValue EvenInRange(IntegerValue value, AbstractValue last)
    {
        var most = last is IntegerValue { IsConstant: true } constant ? constant.Minimum : value.Mask;
        return value.IsConstant
            ? value
            : IntegerValue.Reduce(
                value.Bits,
                value.Known | 1,
                value.Value & ~1UL,
                Math.Min(value.Minimum, most),
                Math.Min(value.Maximum, most)
            ) ?? value;
    }
}
