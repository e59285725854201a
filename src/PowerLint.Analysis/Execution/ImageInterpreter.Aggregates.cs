using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
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
                _memory.Blur(state, target.Region);
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
