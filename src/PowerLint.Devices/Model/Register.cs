using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>What a register is for; only configuration registers are expected to be known at a resting point.</summary>
public enum RegisterKind
{
    /// <summary>The program writes it and it stays: direction, enables, mode selects.</summary>
    Configuration,

    /// <summary>Flags and ready bits that hardware changes.</summary>
    Status,

    /// <summary>Data, counters, input levels.</summary>
    Data,

    /// <summary>A fuse or option byte: no address, set by the configuration file, never written by the program.</summary>
    Option,

    /// <summary>
    /// State that no address of the bus reaches: a row of the table behind an index register, say. Other registers act on it.
    /// </summary>
    Internal,
}

/// <summary>A register of the model. Compares by identity within one model.</summary>
public sealed class Register
{
    private ulong _reset;

    /// <summary>Unique name: <c>DDRB</c>, or <c>PORTA.PIN0CTRL</c> on parts whose headers know peripheral blocks.</summary>
    public required string Name { get; init; }

    /// <summary>The peripheral instance that it belongs to, or null.</summary>
    public string? Peripheral { get; init; }

    /// <summary>
    /// Byte address in the data space; meaningless for <see cref="RegisterKind.Option"/>, beyond every address of the bus for
    /// <see cref="RegisterKind.Internal"/>.
    /// </summary>
    public required ulong Address { get; init; }

    /// <summary>Whether data accesses reach it.</summary>
    public bool IsAddressable => Kind is not (RegisterKind.Option or RegisterKind.Internal);

    /// <summary>Width in bits: 8, 16 or 32. Accesses may be wider or narrower.</summary>
    public required int WidthBits { get; init; }

    /// <summary>Value after reset.</summary>
    public ulong Reset
    {
        get => _reset;
        init => _reset = value;
    }

    /// <summary>Bits of <see cref="Reset"/> that are defined; the others are unknown after reset.</summary>
    public ulong ResetKnown { get; init; } = ulong.MaxValue;

    /// <summary>Whether options decide part of its value after reset.</summary>
    public bool IsLoadedFromOptions { get; init; }

    /// <summary>What it is for.</summary>
    public RegisterKind Kind { get; init; }

    /// <summary>Bits that hardware changes by itself: a read gives an unknown value whatever was written.</summary>
    public ulong HardwareChanged { get; init; }

    /// <summary>Bits that writing 1 clears and writing 0 leaves alone.</summary>
    public ulong WriteOneToClear { get; init; }

    /// <summary>Bits that writing 1 sets and writing 0 leaves alone.</summary>
    public ulong WriteOneToSet { get; init; }

    /// <summary>Bits that writing 1 inverts and writing 0 leaves alone.</summary>
    public ulong WriteOneToToggle { get; init; }

    /// <summary>Bits that writing 0 clears and writing 1 leaves alone.</summary>
    public ulong WriteZeroToClear { get; init; }

    /// <summary>Bits that writing 0 sets and writing 1 leaves alone.</summary>
    public ulong WriteZeroToSet { get; init; }

    /// <summary>Bits that writing 0 inverts and writing 1 leaves alone.</summary>
    public ulong WriteZeroToToggle { get; init; }

    /// <summary>Bits that any write clears, whatever is written.</summary>
    public ulong WriteToClear { get; init; }

    /// <summary>Bits that any write sets, whatever is written.</summary>
    public ulong WriteToSet { get; init; }

    /// <summary>Bits on which a written 1 acts instead of being stored.</summary>
    public ulong ActsOnOne => WriteOneToClear | WriteOneToSet | WriteOneToToggle;

    /// <summary>Bits that always read 0 (strobes, reserved bits); a write to them is an event that leaves nothing.</summary>
    public ulong ReadsZero { get; init; }

    /// <summary>Bits that a write does not change.</summary>
    public ulong ReadOnly { get; init; }

    /// <summary>Bits that read as <see cref="ReadsAsValue"/> whatever was written there (a key).</summary>
    public ulong ReadsAs { get; init; }

    /// <summary>What <see cref="ReadsAs"/> bits read as.</summary>
    public ulong ReadsAsValue { get; init; }

    /// <summary>Fields by name; a bit may be in several.</summary>
    public IReadOnlyDictionary<string, Field> Fields { get; init; } = ImmutableDictionary<string, Field>.Empty;

    /// <inheritdoc/>
    public override string ToString() => Name;

    /// <summary>The same register, with another value after reset.</summary>
    internal Register WithReset(ulong reset)
    {
        var copy = (Register)MemberwiseClone();
        copy._reset = reset;
        return copy;
    }
}

/// <summary>A name under which a header declares a register as an external symbol.</summary>
/// <param name="Name">The name.</param>
/// <param name="Address">The byte address where it begins.</param>
public sealed record RegisterSymbol(string Name, ulong Address);

/// <summary>A named field.</summary>
/// <param name="Name">The name as the vendor's header writes it.</param>
/// <param name="LowBit">Its lowest bit.</param>
/// <param name="WidthBits">Its width.</param>
/// <param name="ValueNames">Names of values, as the datasheet gives them.</param>
public sealed record Field(string Name, int LowBit, int WidthBits, IReadOnlyDictionary<ulong, string> ValueNames);

/// <summary>Bits of a register.</summary>
/// <param name="Register">The register.</param>
/// <param name="LowBit">The lowest bit.</param>
/// <param name="WidthBits">How many bits.</param>
/// <param name="Name">For people: <c>MCUCR.PUD</c>, <c>DDRB[3]</c>.</param>
public sealed record FieldReference(Register Register, int LowBit, int WidthBits, string Name)
{
    /// <summary>The bits as a mask on the register.</summary>
    public ulong Mask => (WidthBits >= 64 ? ulong.MaxValue : (1UL << WidthBits) - 1) << LowBit;

    /// <inheritdoc/>
    public override string ToString() => Name;
}

/// <summary>What writing a one does to the target of an alias register.</summary>
public enum AliasEffect
{
    /// <summary>Sets the bits of the target that are written 1.</summary>
    Set,

    /// <summary>Clears them.</summary>
    Clear,

    /// <summary>Inverts them.</summary>
    Toggle,

    /// <summary>Writes the target: a second address of the same register.</summary>
    Same,
}

/// <summary>A register whose writes act on another one.</summary>
/// <param name="Source">The register written.</param>
/// <param name="Effect">What ones do.</param>
/// <param name="Target">The register acted on.</param>
/// <param name="TargetShift">Bit n of the source acts on bit n + shift of the target.</param>
/// <param name="SourceMask">Bits of the source that take part.</param>
/// <param name="ReadsTarget">Whether a read of the source returns the target.</param>
/// <param name="When">What must hold, the source as just written included, for the write to act.</param>
public sealed record RegisterAlias(
    Register Source,
    AliasEffect Effect,
    Register Target,
    int TargetShift,
    ulong SourceMask,
    bool ReadsTarget,
    Condition When
);

/// <summary>
/// A window on a table: a field of the register chooses the row that the rest of the register reads and writes. A write to the
/// bytes of that field alone only chooses.
/// </summary>
/// <param name="Window">The register at an address of the bus.</param>
/// <param name="Index">Its field that chooses the row.</param>
/// <param name="Rows">The rows, row n for index n; as wide as the window.</param>
public sealed record RegisterWindow(Register Window, FieldReference Index, ImmutableArray<Register> Rows);

/// <summary>
/// Registers that one write reaches together: while the mask is not 0, a write to any of the targets goes to the targets whose
/// bit is set in the mask, and to no other; the mask is 0 afterwards. Target n belongs to bit n.
/// </summary>
/// <param name="Mask">The mask.</param>
/// <param name="Targets">The registers.</param>
public sealed record SharedWrite(Register Mask, ImmutableArray<Register> Targets);

/// <summary>
/// A register whose ones say which registers another register's value goes to: target n belongs to bit n.
/// </summary>
/// <param name="Trigger">The register whose write does it.</param>
/// <param name="Effect">What the value does to the targets; <see cref="AliasEffect.Same"/> takes its place.</param>
/// <param name="Value">The register that holds the value.</param>
/// <param name="Targets">The registers.</param>
public sealed record MaskedWrite(
    Register Trigger,
    AliasEffect Effect,
    Register Value,
    ImmutableArray<Register> Targets
);

/// <summary>Bits that hardware makes follow other bits of the same width: a ready flag follows its enable.</summary>
/// <param name="Follower">The bits that follow.</param>
/// <param name="Leader">The bits followed.</param>
public sealed record FollowingField(FieldReference Follower, FieldReference Leader);

/// <summary>
/// Bits that no register holds: they are what a row of a table holds, and a field says which row. What feeds a peripheral's
/// clock channel is what its generator selects, for example.
/// </summary>
/// <param name="Field">The bits, of a register that no address reaches.</param>
/// <param name="Index">The field that chooses the row.</param>
/// <param name="Rows">The rows, row n for index n; as wide as the bits. An index without a row gives an unknown value.</param>
/// <param name="When">What must hold for the row to count.</param>
/// <param name="Otherwise">What the bits are where that does not hold.</param>
public sealed record FieldLookup(
    FieldReference Field,
    FieldReference Index,
    ImmutableArray<FieldReference> Rows,
    Condition When,
    ulong Otherwise
);

/// <summary>A bit that puts registers back to what they are after reset, when 1 is written to it.</summary>
/// <param name="Trigger">The bit.</param>
/// <param name="Targets">The registers; the one that is written may be among them.</param>
public sealed record RegisterReset(FieldReference Trigger, ImmutableArray<Register> Targets);

/// <summary>Where a figure or fact comes from.</summary>
/// <param name="Document">Document name or number with revision, or <c>from memory</c>.</param>
/// <param name="Place">Table or section.</param>
public sealed record Citation(string Document, string? Place)
{
    /// <inheritdoc/>
    public override string ToString() => Place is null ? Document : $"{Document}, {Place}";
}
