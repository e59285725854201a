using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    private const int MaximumCopiedBytes = 4096;

    // Functions of the C library and of libm that touch no register; what they are given to write through is exposed.
    private static readonly HashSet<string> s_harmless = new(StringComparer.Ordinal)
    {
        "abs",
        "labs",
        "atoi",
        "atol",
        "strtol",
        "strtoul",
        "qsort",
        "bsearch",
        "rand",
        "srand",
        "itoa",
        "utoa",
        "ltoa",
        "ultoa",
        "dtostrf",
        "dtostre",
        "strcpy",
        "strncpy",
        "strcat",
        "strncat",
        "strcmp",
        "strncmp",
        "strchr",
        "strrchr",
        "strstr",
        "strtok",
        "memchr",
        "sprintf",
        "snprintf",
        "vsprintf",
        "vsnprintf",
        "sscanf",
        "fdevopen",
        "malloc",
        "calloc",
        "free",
        "isdigit",
        "isalpha",
        "isspace",
        "toupper",
        "tolower",
        "sin",
        "cos",
        "tan",
        "atan",
        "atan2",
        "sqrt",
        "pow",
        "exp",
        "log",
        "log10",
        "floor",
        "ceil",
        "fabs",
        "fmod",
        "round",
        "lround",
        "trunc",
        "sinf",
        "cosf",
        "sqrtf",
        "fabsf",
        "floorf",
        "ceilf",
        "powf",
        "memcpy_P",
        "strcpy_P",
        "strlen_P",
        "strcmp_P",
        "sprintf_P",
        "snprintf_P",
        "strncpy_P",
        "memcmp_P",
        "strcasecmp",
        "strncasecmp",
        "strlcpy",
        "strlcat",
        "strnlen",
        "strrev",
        "strlwr",
        "strupr",
        "strspn",
        "strcspn",
        "strpbrk",
        "strsep",
        "memmem",
        "memrchr",
        "memccpy",
        "isalnum",
        "isxdigit",
        "isupper",
        "islower",
        "isprint",
        "ispunct",
        "iscntrl",
        "isgraph",
        "isblank",
        "strtod",
        "atof",
        "ltostr",
        "random",
        "srandom",
        "rand_r",
        "div",
        "ldiv",
        "realloc",
        "strncmp_P",
        "strcasecmp_P",
        "strcat_P",
        "strstr_P",
        "strchr_P",
        "strlcpy_P",
        "vsnprintf_P",
        "vsprintf_P",
        "sscanf_P",
        "log2",
        "exp2",
        "hypot",
        "asin",
        "acos",
        "asinf",
        "acosf",
        "tanf",
        "atanf",
        "atan2f",
        "expf",
        "logf",
        "log10f",
        "fmodf",
        "roundf",
        "truncf",
        // Non-volatile memory: its own registers are all that they touch.
        "eeprom_read_byte",
        "eeprom_read_word",
        "eeprom_read_dword",
        "eeprom_read_float",
        "eeprom_read_block",
        "eeprom_write_byte",
        "eeprom_write_word",
        "eeprom_write_dword",
        "eeprom_write_float",
        "eeprom_write_block",
        "eeprom_update_byte",
        "eeprom_update_word",
        "eeprom_update_dword",
        "eeprom_update_float",
        "eeprom_update_block",
    };

    private AbstractValue? CallLibrary(string name, AbstractValue[] arguments, Call call, MachineState state)
    {
        switch (Unprefixed(name))
        {
            case "memcpy" or "memmove" or "memcpy_P" when arguments.Length == 3:
                CopyBytes(arguments[0], arguments[1], arguments[2], state);
                return arguments[0];
            case "memset" when arguments.Length == 3:
                SetBytes(arguments[0], arguments[1], arguments[2], call, state);
                return arguments[0];
            case "strlen" or "strlen_P" or "__strlen_P" when arguments.Length == 1:
                return LengthOf(arguments[0], state) is { } length
                    ? IntegerValue.Constant(BitsOf(call.Type), (ulong)length)
                    : UnknownOf(call.Type);
            case "memcmp" or "memcmp_P" when arguments.Length == 3:
                return CompareBytes(arguments, call, state);
            case "strcpy" or "strcpy_P" when arguments.Length == 2:
                CopyText(arguments[0], arguments[1], 0, state);
                return arguments[0];
            case "strcat" or "strcat_P" when arguments.Length == 2:
                CopyText(arguments[0], arguments[1], LengthOf(arguments[0], state), state);
                return arguments[0];
            case "strcmp" or "strcmp_P" when arguments.Length == 2:
                return CompareText(arguments, call, state);
            case "strchr" when arguments is [_, IntegerValue { IsConstant: true } sought]:
                return FindInText(arguments[0], (byte)sought.Minimum, call, state);
            case "popcount" or "popcountl" or "popcountll" when arguments is [IntegerValue { IsConstant: true } value]:
                return Answer(call, System.Numerics.BitOperations.PopCount(value.Minimum));
            case "parity" or "parityl" or "parityll" when arguments is [IntegerValue { IsConstant: true } value]:
                return Answer(call, System.Numerics.BitOperations.PopCount(value.Minimum) & 1);
            case "ctz" or "ctzl" or "ctzll" when arguments is [IntegerValue { IsConstant: true, Minimum: > 0 } value]:
                return Answer(call, System.Numerics.BitOperations.TrailingZeroCount(value.Minimum));
            case "clz" or "clzl" or "clzll" when arguments is [IntegerValue { IsConstant: true, Minimum: > 0 } value]:
                return Answer(call, System.Numerics.BitOperations.LeadingZeroCount(value.Minimum) - (64 - value.Bits));
            case "ffs" or "ffsl" or "ffsll" when arguments is [IntegerValue { IsConstant: true } value]:
                return Answer(
                    call,
                    value.Minimum == 0 ? 0 : System.Numerics.BitOperations.TrailingZeroCount(value.Minimum) + 1
                );
            case "fabs" or "fabsf" or "fabsl" when arguments is [FloatingValue value]:
                return Apply(value, n => Math.Abs(n));
            case "ceil" or "ceilf" when arguments is [FloatingValue value]:
                return Apply(value, n => Math.Ceiling(n));
            case "floor" or "floorf" when arguments is [FloatingValue value]:
                return Apply(value, n => Math.Floor(n));
            case "round" or "roundf" when arguments is [FloatingValue value]:
                return Apply(value, n => Math.Round(n, MidpointRounding.AwayFromZero));
            case "abs" or "labs" when arguments is [IntegerValue { IsConstant: true } value]:
                return IntegerValue.Constant(
                    BitsOf(call.Type),
                    (ulong)Math.Abs(IntegerArithmetic.SignExtend(value.Minimum, value.Bits))
                );
            case var known when s_harmless.Contains(known) || s_printing.Contains(known):
                foreach (var argument in arguments)
                {
                    Expose(argument, state);
                }

                if (s_printing.Contains(known))
                {
                    PrintToStreams(call, state);
                }

                return UnknownOf(call.Type);
            case "abort" or "exit" or "_exit" or "_Exit":
                state.IsUnreachable = true;
                return AnyValue.Instance;
            default:
                return null;
        }
    }

    private static FloatingValue Apply(FloatingValue value, Func<double, double> function) =>
        value.Number is { } number ? new FloatingValue(function(number)) : value;

    private static string Unprefixed(string name) =>
        name.StartsWith("__builtin_", StringComparison.Ordinal) ? name["__builtin_".Length..] : name;

    private static (Region Region, long Offset)? PlaceOf(AbstractValue pointer) =>
        pointer is PointerValue { Address: null, Targets: [var target] } && target.Offset.IsConstant
            ? (target.Region, (int)target.Offset.Minimum)
            : null;

    private void CopyBytes(AbstractValue to, AbstractValue from, AbstractValue count, MachineState state)
    {
        if (
            PlaceOf(to) is not { } target
            || count is not IntegerValue { IsConstant: true, Minimum: <= MaximumCopiedBytes } size
        )
        {
            NoteEffect(state);
            Expose(to, state);
            return;
        }

        var contents = (AggregateValue)LoadAggregate(from, (long)size.Minimum, state);
        NoteStore(target.Region, state);
        StoreAggregate(target.Region, target.Offset, contents.Cells, contents.SizeBytes, state);
    }

    private void SetBytes(AbstractValue to, AbstractValue value, AbstractValue count, Call call, MachineState state)
    {
        if (count is not IntegerValue { IsConstant: true, Minimum: <= MaximumCopiedBytes } size)
        {
            NoteEffect(state);
            Expose(to, state);
            return;
        }

        var filler = value is IntegerValue integer
            ? IntegerArithmetic.Convert(integer, 8, sourceIsSigned: false)
            : IntegerValue.Unknown(8);
        if (to is IntegerValue { IsConstant: true } absolute)
        {
            for (ulong i = 0; i < size.Minimum; i++)
            {
                StoreBytes(
                    IntegerValue.Constant(absolute.Bits, absolute.Minimum + i),
                    1,
                    filler,
                    call,
                    call.Range,
                    state
                );
            }
        }
        else if (PlaceOf(to) is { } target)
        {
            NoteStore(target.Region, state);
            if (
                filler is { IsConstant: true, Minimum: 0 }
                && target.Offset == 0
                && target.Region.SizeBytes == (long)size.Minimum
                && target.Region.Global is null
            )
            {
                _memory.Clear(state, target.Region);
                return;
            }

            for (long i = 0; i < (long)size.Minimum; i++)
            {
                _memory.Write(state, target.Region, target.Offset + i, 1, filler);
            }
        }
        else
        {
            NoteEffect(state);
            Expose(to, state);
        }
    }

    private long? LengthOf(AbstractValue text, MachineState state)
    {
        if (PlaceOf(text) is not { } place)
        {
            return null;
        }

        for (long i = 0; i < MaximumCopiedBytes; i++)
        {
            if (_memory.Read(state, place.Region, place.Offset + i, 1) is not IntegerValue { IsConstant: true } value)
            {
                return null;
            }

            if (value.Minimum == 0)
            {
                return i;
            }
        }

        return null;
    }

    private static IntegerValue Answer(Call call, int value) =>
        IntegerValue.Constant(BitsOf(call.Type), unchecked((ulong)value));

    private void CopyText(AbstractValue to, AbstractValue from, long? at, MachineState state)
    {
        if (PlaceOf(to) is { } target && at is { } offset && LengthOf(from, state) is { } length)
        {
            var contents = (AggregateValue)LoadAggregate(from, length + 1, state);
            NoteStore(target.Region, state);
            StoreAggregate(target.Region, target.Offset + offset, contents.Cells, contents.SizeBytes, state);
            return;
        }

        NoteEffect(state);
        Expose(to, state);
    }

    private AbstractValue CompareText(AbstractValue[] arguments, Call call, MachineState state)
    {
        if (LengthOf(arguments[0], state) is not { } first || LengthOf(arguments[1], state) is not { } second)
        {
            return UnknownOf(call.Type);
        }

        var count = IntegerValue.Constant(32, (ulong)Math.Min(first, second) + 1);
        return CompareBytes([arguments[0], arguments[1], count], call, state);
    }

    private AbstractValue FindInText(AbstractValue text, byte sought, Call call, MachineState state)
    {
        if (LengthOf(text, state) is not { } length || PlaceOf(text) is not { } place)
        {
            return UnknownOf(call.Type);
        }

        for (long i = 0; i <= length; i++)
        {
            if (_memory.Read(state, place.Region, place.Offset + i, 1) is IntegerValue value && value.Minimum == sought)
            {
                return PointerValue.To(place.Region, place.Offset + i);
            }
        }

        return Answer(call, 0);
    }

    private AbstractValue CompareBytes(AbstractValue[] arguments, Call call, MachineState state)
    {
        if (
            PlaceOf(arguments[0]) is not { } a
            || PlaceOf(arguments[1]) is not { } b
            || arguments[2] is not IntegerValue { IsConstant: true, Minimum: <= MaximumCopiedBytes } size
        )
        {
            return UnknownOf(call.Type);
        }

        for (long i = 0; i < (long)size.Minimum; i++)
        {
            if (
                _memory.Read(state, a.Region, a.Offset + i, 1) is not IntegerValue { IsConstant: true } x
                || _memory.Read(state, b.Region, b.Offset + i, 1) is not IntegerValue { IsConstant: true } y
            )
            {
                return UnknownOf(call.Type);
            }

            if (x.Minimum != y.Minimum)
            {
                // Only the sign is promised by C; a test for zero or for the sign comes out right.
                return IntegerValue.Constant(BitsOf(call.Type), x.Minimum > y.Minimum ? 1 : ulong.MaxValue);
            }
        }

        return IntegerValue.Constant(BitsOf(call.Type), 0);
    }

    /// <summary>Compiler intrinsics and the names that toolchains give the core's instructions.</summary>
    private AbstractValue? CallIntrinsic(string name, AbstractValue[] arguments, Call call, MachineState state)
    {
        switch (name)
        {
            case "__WFE" or "__wfe" or "__builtin_arm_wfe":
                state.Become(ExecuteWaitForEvent(call, call.Range, state.Copy()));
                return AnyValue.Instance;
            case "__builtin_avr_sleep" or "__sleep" or "__WFI" or "__wfi" or "__builtin_arm_wfi":
                state.Become(ExecuteSleep(call, call.Range, state.Copy()));
                return AnyValue.Instance;
            case "__builtin_avr_sei"
            or "__enable_irq"
            or "__enable_interrupt"
            or "_enable_interrupts"
            or "_enable_interrupt"
            or "__eint":
                SetInterrupts(state, isOn: true, call, call.Range);
                return AnyValue.Instance;
            case "__builtin_avr_cli"
            or "__disable_irq"
            or "__disable_interrupt"
            or "_disable_interrupts"
            or "_disable_interrupt"
            or "__dint":
                SetInterrupts(state, isOn: false, call, call.Range);
                return AnyValue.Instance;
            case "__get_PRIMASK":
                return IntegerArithmetic.Convert(PriorityMask(state), BitsOf(call.Type), sourceIsSigned: false);
            case "__set_PRIMASK" when arguments.Length == 1:
                SetPriorityMask(arguments[0], state, call, call.Range);
                return AnyValue.Instance;
            case "__builtin_avr_wdr"
            or "__builtin_avr_nop"
            or "__no_operation"
            or "_no_operation"
            or "__nop"
            or "__NOP"
            or "__DSB"
            or "__ISB"
            or "__DMB"
            or "__builtin_unreachable"
            or "__builtin_prefetch":
                return AnyValue.Instance;
            case "__builtin_va_start" when arguments.Length > 0:
                var list = PointerValue.To(_regions.OfVariadicArguments(_frame.Function, _frame.Depth));
                StoreBytes(arguments[0], _image.Target.PointerBits / 8, list, call, call.Range, state);
                return AnyValue.Instance;
            case "__builtin_va_copy" when arguments.Length > 1:
                // The list itself where it is a pointer; where it is a structure, that or its address.
                var copied = arguments[1] switch
                {
                    PointerValue { Targets: [{ Region.IsVariadic: true }] } pointer => pointer,
                    AggregateValue structure => structure.Cells.GetValueOrDefault(0)?.Value ?? AnyValue.Instance,
                    var address => LoadBytes(address, _image.Target.PointerBits / 8, state, ulong.MaxValue),
                };
                StoreBytes(arguments[0], _image.Target.PointerBits / 8, copied, call, call.Range, state);
                return AnyValue.Instance;
            case "__builtin_va_end":
                return AnyValue.Instance;
            case "__builtin_va_arg" when arguments.Length > 0:
                return NextVariadicArgument(arguments[0], call, state);
            case "__builtin_avr_delay_cycles" or "__delay_cycles":
                NoteDelay(call, arguments, name, state);
                return AnyValue.Instance;
            case "__builtin_avr_swap" when arguments is [IntegerValue value]:
                return IntegerArithmetic.Apply(
                    BinaryOperator.Or,
                    IntegerArithmetic.Apply(
                        BinaryOperator.ShiftLeft,
                        value,
                        IntegerValue.Constant(value.Bits, 4),
                        false
                    ),
                    IntegerArithmetic.Apply(
                        BinaryOperator.ShiftRight,
                        value,
                        IntegerValue.Constant(value.Bits, 4),
                        false
                    ),
                    isSigned: false
                );
            default:
                return _device.Sleep.StatusRegister is null ? null : CallStatusIntrinsic(name, arguments, call, state);
        }
    }

    // Arguments stand one after the other, eight bytes each, so that the type that is asked for does not matter.
    private const int VariadicSlotBytes = 8;

    private void PassVariadicArguments(Frame frame, ReadOnlySpan<AbstractValue> extra, MachineState state)
    {
        var region = _regions.OfVariadicArguments(frame.Function, frame.Depth);
        frame.Locals.Add(region);
        MemoryModel.Drop(state, region);
        for (var i = 0; i < extra.Length; i++)
        {
            var value = extra[i] is IntegerValue integer
                ? IntegerArithmetic.Convert(integer, 8 * VariadicSlotBytes, sourceIsSigned: false)
                : extra[i];
            _memory.Write(state, region, i * VariadicSlotBytes, VariadicSlotBytes, value);
        }
    }

    private AbstractValue NextVariadicArgument(AbstractValue list, Call call, MachineState state)
    {
        var pointerBytes = _image.Target.PointerBits / 8;
        var place = LoadBytes(list, pointerBytes, state, ulong.MaxValue);
        if (place is not PointerValue pointer)
        {
            return UnknownOf(call.Type);
        }

        var value = LoadBytes(pointer, VariadicSlotBytes, state, ulong.MaxValue);
        var next = pointer.Move(IntegerValue.Constant(PointerValue.OffsetBits, VariadicSlotBytes), AddOffsets);
        StoreBytes(list, pointerBytes, next, call, call.Range, state);
        return value is IntegerValue integer
            ? Typed(IntegerArithmetic.LowBits(integer, Math.Max(8, BitsOf(call.Type))), call.Type)
            : Typed(value, call.Type);
    }

    private void NoteDelay(Call call, AbstractValue[] arguments, string name, MachineState state)
    {
        double? cycles = arguments is [IntegerValue { IsConstant: true } count, ..] ? count.Minimum : null;
        var callee = HeaderCallee(name);
        var kind = string.Equals(callee, name, StringComparison.Ordinal)
            ? WaitKind.CycleIntrinsic
            : WaitKind.LibraryDelay;
        NoteWait(kind, call.Range, callee, cycles);
        SpendCycles(state, (long)Math.Min(cycles ?? 0, int.MaxValue));
    }
}
