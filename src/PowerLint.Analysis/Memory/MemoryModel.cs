namespace PowerLint.Analysis;

/// <summary>
/// Reads and writes of plain objects in a state. Cells never overlap; a byte without a cell has its initial value, or any value
/// where the object has none or was blurred.
/// </summary>
internal sealed class MemoryModel(RegionTable regions)
{
    private const int MaximumCellBytes = 8;

    // A write to an unknown place of an object with more candidates than this blurs the whole object.
    private const int MaximumWeakWrites = 64;

    // Marks at an offset that no byte has: what the bytes without a cell hold, where it is not what the object started with.
    private static readonly MemoryCell s_blurred = new(0, AnyValue.Instance);
    private static readonly MemoryCell s_zeroed = new(0, IntegerValue.Constant(8, 0));

    /// <summary>Told of every place that is looked at or written; null where nobody asks.</summary>
    public Footprint? Watched { get; set; }

    public static ulong Key(Region region, long offset) => ((ulong)region.Id << 32) | (uint)offset;

    private static ulong MarkKey(Region region) => Key(region, -1);

    public AbstractValue Read(MachineState state, Region region, long offset, int width)
    {
        Watched?.Touch(region, offset, width);
        var cell = state.Memory.Find(Key(region, offset));
        if (cell is not null && cell.WidthBytes == width)
        {
            return cell.Value;
        }

        if (offset < 0 || (region.SizeBytes > 0 && offset + width > region.SizeBytes))
        {
            return AnyValue.Instance;
        }

        return HasOverlap(state.Memory, region, offset, width)
            ? Compose(state, region, offset, width)
            : ReadUnwritten(state, region, offset, width);
    }

    /// <summary>Reads at a place that may be one of several.</summary>
    public AbstractValue Read(MachineState state, Region region, IntegerValue offset, int width)
    {
        if (offset.IsConstant)
        {
            return Read(state, region, (int)offset.Minimum, width);
        }

        AbstractValue? result = null;
        foreach (var candidate in Candidates(region, offset, width) ?? [])
        {
            var value = Read(state, region, candidate, width);
            result = result is null ? value : AbstractValue.Join(result, value);
            if (result is AnyValue)
            {
                break;
            }
        }

        return result ?? AnyValue.Instance;
    }

    public void Write(MachineState state, Region region, long offset, int width, AbstractValue value)
    {
        Watched?.Touch(region, offset, width);
        var key = Key(region, offset);
        var cell = state.Memory.Find(key);
        if (cell is null || cell.WidthBytes != width)
        {
            if (offset < 0 || (region.SizeBytes > 0 && offset + width > region.SizeBytes))
            {
                return;
            }

            Cut(state, region, offset, width);
        }

        if (cell is null || cell.WidthBytes != width || !ReferenceEquals(cell.Value, value))
        {
            state.Memory = state.Memory.Set(key, new MemoryCell(width, value));
        }
    }

    /// <summary>Writes at a place that may be one of several: each may keep its old value.</summary>
    public void Write(
        MachineState state,
        Region region,
        IntegerValue offset,
        int width,
        AbstractValue value,
        bool isCertain
    )
    {
        if (offset.IsConstant && isCertain)
        {
            Write(state, region, (int)offset.Minimum, width, value);
            return;
        }

        var candidates = Candidates(region, offset, width);
        if (candidates is null)
        {
            Blur(state, region);
            return;
        }

        foreach (var candidate in candidates)
        {
            Write(state, region, candidate, width, AbstractValue.Join(Read(state, region, candidate, width), value));
        }
    }

    /// <summary>Forgets all that is known of an object.</summary>
    public void Blur(MachineState state, Region region)
    {
        Watched?.TouchWhole(region);
        if (!region.IsConstant)
        {
            state.Memory = state.Memory.RemovePrefix(Key(region, 0), 32).Set(MarkKey(region), s_blurred);
        }
    }

    /// <summary>Drops a local that has ceased to exist.</summary>
    public static void Drop(MachineState state, Region region) =>
        state.Memory = state.Memory.RemovePrefix(Key(region, 0), 32);

    /// <summary>Makes an object all zero bytes.</summary>
    public void Clear(MachineState state, Region region)
    {
        Watched?.TouchWhole(region);
        Drop(state, region);
        state.Memory = state.Memory.Set(MarkKey(region), s_zeroed);
    }

    public PersistentMap<MemoryCell> Join(MachineState a, MachineState b) => Merge(a, b, AbstractValue.Join);

    public PersistentMap<MemoryCell> Widen(MachineState before, MachineState after, bool isFar) =>
        Merge(before, after, isFar ? AbstractValue.WidenFar : AbstractValue.Widen);

    public bool IsIncluded(MachineState a, MachineState b) =>
        PersistentMap<MemoryCell>.AllDifferences(
            a.Memory,
            b.Memory,
            (key, inA, inB) =>
            {
                var region = regions[key >> 32];
                var offset = (long)(int)(uint)key;
                if (offset < 0)
                {
                    return StartsUnknown(region, inB) || !StartsUnknown(region, inA);
                }

                var width = inA?.WidthBytes ?? inB!.WidthBytes;
                return AbstractValue.IsIncluded(Read(a, region, offset, width), Read(b, region, offset, width));
            }
        );

    private PersistentMap<MemoryCell> Merge(
        MachineState a,
        MachineState b,
        Func<AbstractValue, AbstractValue, AbstractValue> combine
    )
    {
        if (ReferenceEquals(a.Memory, b.Memory))
        {
            return a.Memory;
        }

        List<(Region Region, long Offset, int Width)>? differentCuts = null;
        var merged = PersistentMap<MemoryCell>.Merge(
            a.Memory,
            b.Memory,
            (key, inA, inB) =>
            {
                var region = regions[key >> 32];
                var offset = (long)(int)(uint)key;
                if (offset < 0)
                {
                    return StartsUnknown(region, inA) || StartsUnknown(region, inB)
                        ? region.StartsKnown
                            ? s_blurred
                            : null
                        : inA ?? inB;
                }

                if (inA is not null && inB is not null && inA.WidthBytes == inB.WidthBytes)
                {
                    var both = combine(inA.Value, inB.Value);
                    return ReferenceEquals(both, inA.Value) ? inA
                        : ReferenceEquals(both, inB.Value) ? inB
                        : new MemoryCell(inA.WidthBytes, both);
                }

                var cell = inA ?? inB!;
                var width = Math.Max(cell.WidthBytes, inB?.WidthBytes ?? 0);
                if (
                    (inA is not null && inB is not null)
                    || HasOverlap((inA is null ? a : b).Memory, region, offset, width)
                )
                {
                    (differentCuts ??= []).Add((region, offset, width));
                    return cell;
                }

                var value = combine(
                    inA?.Value ?? ReadUnwritten(a, region, offset, width),
                    inB?.Value ?? ReadUnwritten(b, region, offset, width)
                );
                return value is AnyValue && !region.StartsKnown ? null
                    : ReferenceEquals(value, cell.Value) ? cell
                    : new MemoryCell(width, value);
            }
        );
        return differentCuts is null ? merged : MergeBytes(a, b, merged, differentCuts, combine);
    }

    // Where the two sides cut the same bytes into different cells, only bytes can be compared.
    private PersistentMap<MemoryCell> MergeBytes(
        MachineState a,
        MachineState b,
        PersistentMap<MemoryCell> merged,
        List<(Region Region, long Offset, int Width)> cuts,
        Func<AbstractValue, AbstractValue, AbstractValue> combine
    )
    {
        var result = a.Copy();
        result.Memory = merged;
        foreach (var (region, offset, width) in cuts)
        {
            for (var i = offset - MaximumCellBytes + 1; i < offset + width; i++)
            {
                result.Memory = result.Memory.Find(Key(region, i)) is { WidthBytes: > 1 }
                    ? result.Memory.Remove(Key(region, i))
                    : result.Memory;
            }
        }

        foreach (var (region, offset, width) in cuts)
        {
            for (var i = Math.Max(0, offset - MaximumCellBytes + 1); i < offset + width + MaximumCellBytes - 1; i++)
            {
                if (region.SizeBytes > 0 && i >= region.SizeBytes)
                {
                    break;
                }

                if (result.Memory.Find(Key(region, i)) is null && !HasOverlap(result.Memory, region, i, 1))
                {
                    result.Memory = result.Memory.Set(
                        Key(region, i),
                        new MemoryCell(1, combine(Read(a, region, i, 1), Read(b, region, i, 1)))
                    );
                }
            }
        }

        return result.Memory;
    }

    private static bool StartsUnknown(Region region, MemoryCell? mark) =>
        ReferenceEquals(mark, s_blurred) || (mark is null && !region.StartsKnown);

    private static bool HasOverlap(PersistentMap<MemoryCell> memory, Region region, long offset, int width)
    {
        for (var i = Math.Max(0, offset - MaximumCellBytes + 1); i < offset + width; i++)
        {
            if (memory.Find(Key(region, i)) is { } cell && i + cell.WidthBytes > offset)
            {
                return true;
            }
        }

        return false;
    }

    private static AbstractValue ReadUnwritten(MachineState state, Region region, long offset, int width)
    {
        var mark = state.Memory.Find(MarkKey(region));
        if (StartsUnknown(region, mark))
        {
            return AnyValue.Instance;
        }

        if (mark is not null || region.Initial is not { } initial)
        {
            return IntegerValue.Constant(8 * width, 0);
        }

        if (initial.HasCells)
        {
            if (initial.CellAt(offset) is { } cell && cell.WidthBytes == width)
            {
                return cell.Value;
            }

            for (var i = offset - MaximumCellBytes + 1; i < offset + width; i++)
            {
                if (initial.CellAt(i) is { } other && i + other.WidthBytes > offset)
                {
                    return AnyValue.Instance;
                }
            }
        }

        ulong value = 0;
        for (var i = 0; i < width && offset + i < initial.Bytes.Length; i++)
        {
            value |= (ulong)initial.Bytes[offset + i] << (8 * i);
        }

        return IntegerValue.Constant(8 * width, value);
    }

    private AbstractValue Compose(MachineState state, Region region, long offset, int width)
    {
        ulong known = 0;
        ulong value = 0;
        for (var i = 0; i < width; i++)
        {
            if (ReadByte(state, region, offset + i) is { } bits)
            {
                known |= bits.Known << (8 * i);
                value |= bits.Value << (8 * i);
            }
        }

        return IntegerValue.Reduce(8 * width, known, value, 0, ulong.MaxValue)!;
    }

    private static KnownBits? ReadByte(MachineState state, Region region, long offset)
    {
        for (var i = offset; i > offset - MaximumCellBytes && i >= 0; i--)
        {
            if (state.Memory.Find(Key(region, i)) is { } cell && i + cell.WidthBytes > offset)
            {
                return cell.Value is IntegerValue integer
                    ? new KnownBits(
                        (integer.Known >> (int)(8 * (offset - i))) & 0xFF,
                        (integer.Value >> (int)(8 * (offset - i))) & 0xFF
                    )
                    : null;
            }
        }

        return ReadUnwritten(state, region, offset, 1) is IntegerValue unwritten ? unwritten.KnownBits : null;
    }

    // Before a write: what it does not cover of the cells that it touches is kept as bytes.
    private static void Cut(MachineState state, Region region, long offset, int width)
    {
        for (var i = Math.Max(0, offset - MaximumCellBytes + 1); i < offset + width; i++)
        {
            if (state.Memory.Find(Key(region, i)) is not { } cell || i + cell.WidthBytes <= offset)
            {
                continue;
            }

            state.Memory = state.Memory.Remove(Key(region, i));
            for (var j = 0; j < cell.WidthBytes; j++)
            {
                if (i + j >= offset && i + j < offset + width)
                {
                    continue;
                }

                AbstractValue piece = cell.Value is IntegerValue integer
                    ? IntegerArithmetic.Convert(
                        IntegerArithmetic.Apply(
                            Program.BinaryOperator.ShiftRight,
                            integer,
                            IntegerValue.Constant(integer.Bits, (ulong)(8 * j)),
                            isSigned: false
                        ),
                        8,
                        sourceIsSigned: false
                    )
                    : AnyValue.Instance;
                state.Memory = state.Memory.Set(Key(region, i + j), new MemoryCell(1, piece));
            }
        }
    }

    private static List<long>? Candidates(Region region, IntegerValue offset, int width)
    {
        var candidates = new List<long>();
        if (offset.Exact is not null)
        {
            foreach (var value in offset.Exact)
            {
                candidates.Add((int)value);
            }
        }
        else
        {
            var last =
                region.SizeBytes > 0 ? Math.Min((long)offset.Maximum, region.SizeBytes - width) : (long)offset.Maximum;
            for (var i = (long)offset.Minimum; i <= last; i++)
            {
                if (offset.MayBe((ulong)i))
                {
                    candidates.Add(i);
                    if (candidates.Count > MaximumWeakWrites)
                    {
                        return null;
                    }
                }
            }
        }

        candidates.RemoveAll(o => o < 0 || (region.SizeBytes > 0 && o + width > region.SizeBytes));
        return candidates;
    }
}
