using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    // A port chosen at run time is one of a few; beyond that an address is as good as unknown.
    private const int MaximumAddresses = 64;

    private AbstractValue EvaluateLoad(Load load, MachineState state, ulong demanded)
    {
        var address = Evaluate(load.Address, state);
        if (load.Type is AggregateType aggregate)
        {
            return LoadAggregate(address, aggregate.Bytes, state);
        }

        if (load.BitField is { } field)
        {
            var unit = LoadBytes(
                address,
                field.StorageBits / 8,
                state,
                IntegerValue.MaskOf(field.BitWidth) << field.BitOffset
            );
            return ExtractField(unit, field, load.Type);
        }

        var width = (int)load.Type.SizeBytes;
        return Typed(LoadBytes(address, width, state, demanded), load.Type);
    }

    private static AbstractValue Typed(AbstractValue value, CType type) =>
        (type, value) switch
        {
            (IntegerType integer, IntegerValue v) => IntegerArithmetic.Convert(v, integer.Bits, sourceIsSigned: false),
            (PointerType pointer, IntegerValue v) => IntegerArithmetic.Convert(v, pointer.Bits, sourceIsSigned: false),
            (IntegerType { Bits: 32 }, FloatingValue { Number: { } number }) => IntegerValue.Constant(
                32,
                BitConverter.SingleToUInt32Bits((float)number)
            ),
            (IntegerType { Bits: 64 }, FloatingValue { Number: { } number }) => IntegerValue.Constant(
                64,
                BitConverter.DoubleToUInt64Bits(number)
            ),
            (IntegerType integer, FloatingValue) => IntegerValue.Unknown(integer.Bits),
            (FloatingType { Bits: 32 }, IntegerValue { IsConstant: true } bits) => new FloatingValue(
                BitConverter.UInt32BitsToSingle((uint)bits.Minimum)
            ),
            (FloatingType, IntegerValue { IsConstant: true } bits) => new FloatingValue(
                BitConverter.UInt64BitsToDouble(bits.Minimum)
            ),
            (IntegerType integer, AnyValue) when integer.Bits < 16 => IntegerValue.Unknown(integer.Bits),
            (IntegerType integer, AnyValue) => IntegerValue.Unknown(integer.Bits),
            (FloatingType, not FloatingValue) => FloatingValue.Unknown,
            _ => value,
        };

    private static AbstractValue ExtractField(AbstractValue unit, BitField field, CType type)
    {
        if (unit is not IntegerValue integer)
        {
            return UnknownOf(type);
        }

        var shifted = IntegerArithmetic.Apply(
            BinaryOperator.ShiftRight,
            integer,
            IntegerValue.Constant(integer.Bits, (ulong)field.BitOffset),
            isSigned: false
        );
        var narrow = IntegerArithmetic.LowBits(shifted, field.BitWidth);
        return IntegerArithmetic.Convert(narrow, BitsOf(type), IsSigned(type));
    }

    private AbstractValue LoadBytes(AbstractValue address, int width, MachineState state, ulong demanded)
    {
        switch (address)
        {
            case IntegerValue absolute:
                return LoadAbsolute(absolute, width, state, demanded);
            case PointerValue pointer:
                AbstractValue? result =
                    pointer.Address is { } other && other.IsTrue != Tristate.No
                        ? LoadAbsolute(other, width, state, demanded)
                        : null;
                foreach (var target in pointer.Targets)
                {
                    NoteAccess(target.Region);
                    NoteRead(target.Region, target.Offset, width);
                    var value = _memory.Read(state, target.Region, target.Offset, width);
                    result = result is null ? value : AbstractValue.Join(result, value);
                }

                return result ?? AnyValue.Instance;
            default:
                return AnyValue.Instance;
        }
    }

    private IntegerValue LoadAbsolute(IntegerValue address, int width, MachineState state, ulong demanded)
    {
        if (width is 0 or > 8)
        {
            return IntegerValue.Unknown(64);
        }

        if (address.Exact is null || address.Exact.Length > MaximumAddresses)
        {
            return IntegerValue.Unknown(8 * width);
        }

        IntegerValue? result = null;
        foreach (var at in address.Exact)
        {
            NoteRegisterRead(at, width, demanded);
            SpendCycles(state, at, width);
            var value = _registers.Read(state, at, width);
            result = result is null ? value : IntegerValue.Join(result, value);
        }

        return result!;
    }

    private AbstractValue EvaluateAssignment(Assignment assignment, MachineState state)
    {
        var address = Evaluate(assignment.Address, state);
        if (assignment.Type is AggregateType aggregate)
        {
            var contents = Evaluate(assignment.Value, state);
            StoreAggregate(address, contents, aggregate.Bytes, assignment, state);
            return contents;
        }

        if (assignment.Operator is not { } @operator)
        {
            var value = Evaluate(assignment.Value, state);
            return Store(assignment, address, value, state);
        }

        var right = Evaluate(assignment.Value, state);
        var old = ReadObject(assignment, address, state, DemandOfCompound(@operator, right));
        AbstractValue result;
        if (assignment.PointerScaleBytes != 0)
        {
            var scale =
                @operator == BinaryOperator.Subtract ? -assignment.PointerScaleBytes : assignment.PointerScaleBytes;
            result = Move(old, right, assignment.Value.Type, scale);
        }
        else
        {
            var computation = assignment.ComputationType!;
            SpendCycles(state, 1);
            var left = ConvertTo(old, assignment.Type, computation);
            result = ConvertTo(Combine(@operator, left, right, computation, computation), computation, assignment.Type);
        }

        if (result is IntegerValue written)
        {
            result = WithoutOtherStrobes(assignment, address, right, written);
        }

        var stored = Store(assignment, address, result, state);
        return assignment.YieldsOldValue ? old : stored;
    }

    // Setting one constant bit of a register in the lowest I/O space is one instruction (SBI) in the image, which touches that
    // bit alone: ones that stand beside it toggle no output and clear no flag (AVR instruction set, from memory).
    private IntegerValue WithoutOtherStrobes(
        Assignment assignment,
        AbstractValue address,
        AbstractValue right,
        IntegerValue written
    )
    {
        var firstIo = _device.Core == "avr" ? 0x20u : 0u;
        if (
            assignment is not { Operator: BinaryOperator.Or, Type: IntegerType { Bits: 8 } }
            || _image.Target.Architecture != "avr"
            || address is not IntegerValue { IsConstant: true } place
            || place.Minimum - firstIo >= 0x20
            || right is not IntegerValue { IsConstant: true } bit
            || !ulong.IsPow2(bit.Minimum)
            || _map.SlotAt(place.Minimum) is not { } slot
        )
        {
            return written;
        }

        var strobes = _map.Aliases[slot.Register]
            .Aggregate(slot.Register.ActsOnOne, (mask, alias) => mask | alias.SourceMask);
        return IntegerArithmetic.Apply(
            BinaryOperator.And,
            written,
            IntegerValue.Constant(written.Bits, ~strobes | bit.Minimum),
            isSigned: false
        );
    }

    // A compound assignment to a register does not look at what it reads: it only keeps it.
    private static ulong DemandOfCompound(BinaryOperator @operator, AbstractValue right) =>
        @operator is BinaryOperator.Or or BinaryOperator.And or BinaryOperator.Xor && right is IntegerValue
            ? 0
            : ulong.MaxValue;

    private AbstractValue ReadObject(Assignment assignment, AbstractValue address, MachineState state, ulong demanded)
    {
        if (assignment.BitField is { } field)
        {
            return ExtractField(LoadBytes(address, field.StorageBits / 8, state, 0), field, assignment.Type);
        }

        return Typed(LoadBytes(address, (int)assignment.Type.SizeBytes, state, demanded), assignment.Type);
    }

    // Stores a value of the object's type and gives what a read of the object yields.
    private AbstractValue Store(Assignment assignment, AbstractValue address, AbstractValue value, MachineState state)
    {
        if (assignment.BitField is not { } field)
        {
            var width = (int)assignment.Type.SizeBytes;
            StoreBytes(address, width, InMemory(value, width), assignment, assignment.Range, state);
            return value;
        }

        var unitBytes = field.StorageBits / 8;
        var unit = LoadBytes(address, unitBytes, state, 0);
        if (unit is not IntegerValue old)
        {
            old = IntegerValue.Unknown(field.StorageBits);
        }

        var part = value is IntegerValue integer
            ? IntegerArithmetic.Convert(IntegerArithmetic.LowBits(integer, field.BitWidth), field.StorageBits, false)
            : IntegerValue.Unknown(field.StorageBits);
        if (value is not IntegerValue)
        {
            part = IntegerArithmetic.Convert(IntegerValue.Unknown(field.BitWidth), field.StorageBits, false);
        }

        var mask = IntegerValue.MaskOf(field.BitWidth) << field.BitOffset;
        var shifted = IntegerArithmetic.Apply(
            BinaryOperator.ShiftLeft,
            part,
            IntegerValue.Constant(field.StorageBits, (ulong)field.BitOffset),
            isSigned: false
        );
        var kept = IntegerArithmetic.Apply(
            BinaryOperator.And,
            old,
            IntegerValue.Constant(field.StorageBits, ~mask),
            isSigned: false
        );
        StoreBytes(
            address,
            unitBytes,
            IntegerArithmetic.Apply(BinaryOperator.Or, kept, shifted, isSigned: false),
            assignment,
            assignment.Range,
            state
        );
        var read = IntegerArithmetic.LowBits(part, field.BitWidth);
        return IntegerArithmetic.Convert(read, BitsOf(assignment.Type), IsSigned(assignment.Type));
    }

    // Memory holds integers of eight bits a byte: booleans and odd widths are extended.
    private static AbstractValue InMemory(AbstractValue value, int width) =>
        value is IntegerValue integer && integer.Bits != 8 * width && width is > 0 and <= 8
            ? IntegerArithmetic.Convert(integer, 8 * width, sourceIsSigned: false)
            : value;

    private void StoreBytes(
        AbstractValue address,
        int width,
        AbstractValue value,
        object node,
        SourceRange range,
        MachineState state
    )
    {
        switch (address)
        {
            case IntegerValue absolute:
                StoreAbsolute(absolute, width, value, node, range, state, isCertain: true);
                break;
            case PointerValue pointer:
                var isOne = pointer.Targets.Length == 1 && pointer.Address is null;
                foreach (var target in pointer.Targets)
                {
                    NoteStore(target.Region, state, _trial is not { } trial || !IsCountingStore(trial, target, node));
                    NoteHandlerWrite(target.Region, target.Offset, value, node);
                    _memory.Write(state, target.Region, target.Offset, width, Plain(value), isOne);
                }

                if (pointer.Address is { IsTrue: not Tristate.No } other)
                {
                    StoreAbsolute(other, width, value, node, range, state, pointer.Targets.IsEmpty);
                }

                break;
            default:
                NoteEffect(state);
                AddUnknownCallee(state, "a write through a pointer that is not known");
                Events.Limit(
                    "unknown-pointer",
                    "A write goes through a pointer whose target is not known; registers are taken not to change by it.",
                    _frame.Chain.UserPlace(range).Range,
                    isIncomplete: false
                );
                break;
        }
    }

    private static AbstractValue Plain(AbstractValue value) =>
        value is IntegerValue { Origin: not null } integer && integer.Origin.Mask == 0
            ? integer.WithOrigin(null)
            : value;

    private void StoreAbsolute(
        IntegerValue address,
        int width,
        AbstractValue value,
        object node,
        SourceRange range,
        MachineState state,
        bool isCertain
    )
    {
        NoteEffect(state, isWork: false);
        var integer = value as IntegerValue ?? IntegerValue.Unknown(8 * width);
        if (address.Exact is null || address.Exact.Length > MaximumAddresses)
        {
            _trial?.NoteWork();
            AddUnknownCallee(state, "a write to an address that is not known");
            Events.Limit(
                "unknown-address",
                "A write goes to an absolute address that is not known; registers are taken not to change by it.",
                _frame.Chain.UserPlace(range).Range,
                isIncomplete: false
            );
            return;
        }

        foreach (var at in address.Exact)
        {
            SpendCycles(state, at, width);
            Decision? made = null;
            HashSet<Devices.Register>? losing = null;
            _registers.Write(
                state,
                at,
                width,
                integer,
                isCertain && address.IsConstant,
                (before, after) =>
                {
                    if (_trial is { } trial && IsWorkOnRegister(trial, at, width, integer, before, after))
                    {
                        trial.NoteWork();
                    }

                    return made = Decide(node, range, at, width, before, after);
                },
                lost =>
                {
                    (losing ??= []).Add(lost.Register);
                    NoteLostWrite(lost, made!);
                }
            );
            NoteEffectiveWrite(at, width, losing, made!);
            NoteRegisterWrite(at, width, integer, made!, state);
            SleepByWrite(at, width, node, range, state);
        }

        if (state.IsReset)
        {
            // The program starts anew; where the write goes to one of several addresses, not on every way.
            state.IsReset = false;
            state.IsUnreachable |= isCertain && address.IsConstant;
        }
    }
}
