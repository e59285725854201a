using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>An object that pointers can point into: a variable, one call's local, a function, a label.</summary>
internal sealed class Region(int id, string name, long sizeBytes)
{
    public int Id { get; } = id;

    public string Name { get; } = name;

    /// <summary>Size in bytes; 0 where unknown.</summary>
    public long SizeBytes { get; } = sizeBytes;

    /// <summary>The global that it holds, after linking.</summary>
    public GlobalVariable? Global { get; init; }

    /// <summary>The function that it is the address of.</summary>
    public FunctionSymbol? Function { get; init; }

    /// <summary>The label that it is the address of.</summary>
    public string? Label { get; init; }

    /// <summary>Whether it holds the arguments beyond the named ones of an active call.</summary>
    public bool IsVariadic { get; init; }

    /// <summary>The frame depth of the call that it is a local of; -1 for what outlives calls.</summary>
    public int Depth { get; init; } = -1;

    /// <summary>Nothing writes it.</summary>
    public bool IsConstant => Global?.IsConstant == true;

    /// <summary>Whether it starts with known contents: zeros or an initialiser.</summary>
    public bool StartsKnown => Global is { IsUninitialized: false, IsDeclarationOnly: false };

    /// <summary>What start-up code puts there; null for an all-zero or unknown start.</summary>
    public InitialContents? Initial { get; set; }

    public override string ToString() => Name;
}

/// <summary>What start-up code puts into a global.</summary>
/// <param name="bytes">The bytes, zeros where nothing is given.</param>
internal sealed class InitialContents(byte[] bytes)
{
    private readonly SortedDictionary<long, MemoryCell> _cells = [];

    /// <summary>The bytes; those under a cell are meaningless.</summary>
    public byte[] Bytes { get; } = bytes;

    public void SetCell(long offset, MemoryCell cell) => _cells[offset] = cell;

    public MemoryCell? CellAt(long offset) => _cells.GetValueOrDefault(offset);

    public bool HasCells => _cells.Count > 0;
}

/// <summary>A scalar in memory.</summary>
/// <param name="WidthBytes">How many bytes it fills.</param>
/// <param name="Value">What it can be; an integer has eight bits a byte.</param>
internal sealed record MemoryCell(int WidthBytes, AbstractValue Value)
{
    /// <summary>Whether two cells, or the lack of them, say the same.</summary>
    public static bool AreSame(MemoryCell? a, MemoryCell? b) =>
        ReferenceEquals(a, b)
        || (a is not null && b is not null && a.WidthBytes == b.WidthBytes && AbstractValue.AreSame(a.Value, b.Value));
}
