using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    private void Declare(LocalDeclaration declaration, MachineState state)
    {
        var region = _regions.Of(declaration.Variable, _frame.Depth);
        _frame.Locals.Add(region);
        if (declaration.Initializer is { } initializer)
        {
            Initialize(region, initializer, state);
        }
        else
        {
            MemoryModel.Drop(state, region);
        }
    }

    private void Initialize(Region region, Initializer initializer, MachineState state)
    {
        _frame.Locals.Add(region);

        // The initialiser of a variable may read its old value only by mistake; a loop that comes round starts it afresh.
        var values = new List<(ValueEntry Entry, AbstractValue Value)>();
        foreach (var entry in initializer.Entries.OfType<ValueEntry>())
        {
            values.Add((entry, Evaluate(entry.Value, state)));
        }

        if (
            initializer.Entries is [ValueEntry { OffsetBytes: 0, BitField: null } only]
            && only.Value.Type.SizeBytes == region.SizeBytes
            && only.Value.Type is not AggregateType
        )
        {
            _memory.Write(state, region, 0, (int)region.SizeBytes, InMemory(values[0].Value, (int)region.SizeBytes));
            return;
        }

        _memory.Clear(state, region);
        var next = 0;
        foreach (var entry in initializer.Entries)
        {
            if (entry is BytesEntry bytes)
            {
                WriteBytes(region, bytes, state);
            }
            else
            {
                WriteEntry(region, values[next].Entry, values[next].Value, state);
                next++;
            }
        }
    }

    private void WriteBytes(Region region, BytesEntry entry, MachineState state)
    {
        for (var i = 0; i + entry.ElementBytes <= entry.Bytes.Length; i += entry.ElementBytes)
        {
            ulong value = 0;
            for (var j = 0; j < entry.ElementBytes; j++)
            {
                value |= (ulong)entry.Bytes[i + j] << (8 * j);
            }

            _memory.Write(
                state,
                region,
                entry.OffsetBytes + i,
                entry.ElementBytes,
                IntegerValue.Constant(8 * entry.ElementBytes, value)
            );
        }
    }

    private void WriteEntry(Region region, ValueEntry entry, AbstractValue value, MachineState state)
    {
        if (entry.Value.Type is AggregateType aggregate)
        {
            StoreAggregate(region, entry.OffsetBytes, (value as AggregateValue)?.Cells ?? [], aggregate.Bytes, state);
            return;
        }

        if (entry.BitField is { } field)
        {
            var width = field.StorageBits / 8;
            var old =
                _memory.Read(state, region, entry.OffsetBytes, width) as IntegerValue
                ?? IntegerValue.Unknown(8 * width);
            var mask = IntegerValue.MaskOf(field.BitWidth) << field.BitOffset;
            var part = value as IntegerValue ?? IntegerValue.Unknown(field.BitWidth);
            part = IntegerArithmetic.Convert(IntegerArithmetic.LowBits(part, field.BitWidth), 8 * width, false);
            var shifted = IntegerArithmetic.Apply(
                BinaryOperator.ShiftLeft,
                part,
                IntegerValue.Constant(8 * width, (ulong)field.BitOffset),
                isSigned: false
            );
            var kept = IntegerArithmetic.Apply(
                BinaryOperator.And,
                old,
                IntegerValue.Constant(8 * width, ~mask),
                isSigned: false
            );
            _memory.Write(
                state,
                region,
                entry.OffsetBytes,
                width,
                IntegerArithmetic.Apply(BinaryOperator.Or, kept, shifted, isSigned: false)
            );
            return;
        }

        var size = (int)entry.Value.Type.SizeBytes;
        _memory.Write(state, region, entry.OffsetBytes, size, InMemory(value, size));
    }

    // What start-up code puts into a global: evaluated once, in no state that matters.
    private void FillInitialContents(Region region, Initializer initializer)
    {
        var size = Math.Max(
            region.SizeBytes,
            initializer.Entries.OfType<BytesEntry>().Select(e => e.OffsetBytes + e.Bytes.Length).DefaultIfEmpty().Max()
        );
        var contents = new InitialContents(new byte[size]);
        region.Initial = contents;
        var state = new MachineState
        {
            Memory = PersistentMap<MemoryCell>.Empty,
            Registers = PersistentMap<RegisterByte>.Empty,
        };
        foreach (var entry in initializer.Entries)
        {
            switch (entry)
            {
                case BytesEntry bytes:
                    bytes.Bytes.CopyTo(contents.Bytes, bytes.OffsetBytes);
                    break;
                case ValueEntry { Value.Type: AggregateType } aggregate:
                    if (Evaluate(aggregate.Value, state) is AggregateValue value)
                    {
                        foreach (var (offset, cell) in value.Cells)
                        {
                            FillScalar(contents, aggregate.OffsetBytes + offset, cell.WidthBytes, cell.Value);
                        }
                    }

                    break;
                case ValueEntry { BitField: { } field } part:
                    FillField(contents, part.OffsetBytes, field, Evaluate(part.Value, state));
                    break;
                case ValueEntry scalar:
                    var width = (int)scalar.Value.Type.SizeBytes;
                    FillScalar(contents, scalar.OffsetBytes, width, InMemory(Evaluate(scalar.Value, state), width));
                    break;
            }
        }
    }

    private static void FillScalar(InitialContents contents, long offset, int width, AbstractValue value)
    {
        if (value is not IntegerValue { IsConstant: true } constant)
        {
            contents.SetCell(offset, new MemoryCell(width, value));
            return;
        }

        for (var i = 0; i < width && offset + i < contents.Bytes.Length; i++)
        {
            contents.Bytes[offset + i] = (byte)(constant.Minimum >> (8 * i));
        }
    }

    private static void FillField(InitialContents contents, long offset, BitField field, AbstractValue value)
    {
        var bits = value is IntegerValue { IsConstant: true } constant ? constant.Minimum : 0;
        for (var i = 0; i < field.BitWidth; i++)
        {
            var at = field.BitOffset + i;
            var mask = (byte)(1 << (at % 8));
            ref var target = ref contents.Bytes[offset + (at / 8)];
            target = (byte)(((bits >> i) & 1) != 0 ? target | mask : target & ~mask);
        }
    }
}
