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
            }

            if (slot.Register.Kind == RegisterKind.Data)
            {
                Events.Touched.Add(slot.Register);
            }
        }
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

        var stored = Store(assignment, address, result, state);
        return assignment.YieldsOldValue ? old : stored;
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
                    NoteStore(target.Region, state);
                    _memory.Write(state, target.Region, target.Offset, width, Plain(value), isOne);
                }

                if (pointer.Address is { IsTrue: not Tristate.No } other)
                {
                    StoreAbsolute(other, width, value, node, range, state, pointer.Targets.IsEmpty);
                }

                break;
            default:
                _effects++;
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
        _effects++;
        var integer = value as IntegerValue ?? IntegerValue.Unknown(8 * width);
        if (address.Exact is null || address.Exact.Length > MaximumAddresses)
        {
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
                (before, after) => made = Decide(node, range, at, width, before, after),
                lost =>
                {
                    (losing ??= []).Add(lost.Register);
                    NoteLostWrite(lost, made!);
                }
            );
            NoteEffectiveWrite(at, width, losing, made!);
            NoteRegisterWrite(at, width, integer, made!, state);
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

    private void NoteSharedPlace(ulong address, MachineState state)
    {
        if (IsInHandler)
        {
            _handlerAddresses.Add(address);
        }
        else if (_handlerAddresses.Contains(address))
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

    private void NoteStore(Region region, MachineState state)
    {
        NoteAccess(region);
        if (region.Global is not null)
        {
            _effects++;
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

    private AbstractValue LoadAggregate(AbstractValue address, long sizeBytes, MachineState state)
    {
        AggregateValue? result = null;
        if (address is PointerValue { Address: null } pointer && sizeBytes <= 4096)
        {
            foreach (var target in pointer.Targets)
            {
                NoteAccess(target.Region);
                var contents = target.Offset.IsConstant
                    ? LoadAggregate(target.Region, (int)target.Offset.Minimum, sizeBytes, state)
                    : new AggregateValue(sizeBytes, []);
                result = result is null ? contents : AggregateValue.Join(result, contents);
            }
        }
        else if (address is IntegerValue { IsConstant: true } absolute && sizeBytes <= 64)
        {
            var cells = new SortedDictionary<long, MemoryCell>();
            for (var i = 0; i < sizeBytes; i++)
            {
                NoteRegisterRead(absolute.Minimum + (ulong)i, 1, 0xFF);
                cells[i] = new MemoryCell(1, _registers.Read(state, absolute.Minimum + (ulong)i, 1).WithOrigin(null));
            }

            result = new AggregateValue(sizeBytes, cells);
        }

        return result ?? new AggregateValue(sizeBytes, []);
    }

    private AggregateValue LoadAggregate(Region region, long offset, long sizeBytes, MachineState state)
    {
        var cells = new SortedDictionary<long, MemoryCell>();
        for (long i = 0; i < sizeBytes; )
        {
            var cell = state.Memory.Find(MemoryModel.Key(region, offset + i)) ?? region.Initial?.CellAt(offset + i);
            var width = cell is not null && i + cell.WidthBytes <= sizeBytes ? cell.WidthBytes : 1;
            var value = _memory.Read(state, region, offset + i, width);
            if (value is not AnyValue)
            {
                cells[i] = new MemoryCell(width, value);
            }

            i += width;
        }

        return new AggregateValue(sizeBytes, cells);
    }

    private void StoreAggregate(
        AbstractValue address,
        AbstractValue contents,
        long sizeBytes,
        Assignment assignment,
        MachineState state
    )
    {
        var cells = (contents as AggregateValue)?.Cells ?? [];
        if (address is PointerValue { Address: null, Targets: [var only] } && only.Offset.IsConstant)
        {
            NoteStore(only.Region, state);
            StoreAggregate(only.Region, (int)only.Offset.Minimum, cells, sizeBytes, state);
            return;
        }

        if (address is PointerValue pointer)
        {
            foreach (var target in pointer.Targets)
            {
                NoteStore(target.Region, state);
                MemoryModel.Blur(state, target.Region);
            }

            return;
        }

        if (address is IntegerValue { IsConstant: true } absolute && sizeBytes <= 4096)
        {
            for (long i = 0; i < sizeBytes; i++)
            {
                if (cells.TryGetValue(i, out var cell))
                {
                    var at = IntegerValue.Constant(absolute.Bits, absolute.Minimum + (ulong)i);
                    StoreBytes(at, cell.WidthBytes, cell.Value, assignment, assignment.Range, state);
                }
            }

            return;
        }

        StoreBytes(AnyValue.Instance, 1, AnyValue.Instance, assignment, assignment.Range, state);
    }

    private void StoreAggregate(
        Region region,
        long offset,
        SortedDictionary<long, MemoryCell> cells,
        long sizeBytes,
        MachineState state
    )
    {
        for (long i = 0; i < sizeBytes; )
        {
            if (cells.TryGetValue(i, out var cell))
            {
                _memory.Write(state, region, offset + i, cell.WidthBytes, cell.Value);
                i += cell.WidthBytes;
            }
            else
            {
                _memory.Write(state, region, offset + i, 1, AnyValue.Instance);
                i++;
            }
        }
    }
}
