namespace PowerLint.Analysis;

/// <summary>The contents of a structure, union or array on their way from one place to another.</summary>
/// <param name="sizeBytes">Its size.</param>
/// <param name="cells">The scalars in it, by offset; bytes without one are unknown.</param>
internal sealed class AggregateValue(long sizeBytes, SortedDictionary<long, MemoryCell> cells) : AbstractValue
{
    public long SizeBytes { get; } = sizeBytes;

    public SortedDictionary<long, MemoryCell> Cells { get; } = cells;

    public static AggregateValue Join(AggregateValue a, AggregateValue b)
    {
        var both = new SortedDictionary<long, MemoryCell>();
        foreach (var (offset, cell) in a.Cells)
        {
            if (b.Cells.TryGetValue(offset, out var other) && other.WidthBytes == cell.WidthBytes)
            {
                both[offset] = new MemoryCell(cell.WidthBytes, Join(cell.Value, other.Value));
            }
        }

        return new AggregateValue(Math.Max(a.SizeBytes, b.SizeBytes), both);
    }
}
