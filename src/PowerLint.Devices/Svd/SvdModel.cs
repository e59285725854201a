using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>A flaw in an SVD file that did not keep it from being imported.</summary>
/// <param name="File">The file as it was given.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Message">What was found, and what was made of it.</param>
public sealed record SvdNotice(string File, int Line, string Message)
{
    /// <inheritdoc/>
    public override string ToString() => $"{File}:{Line}: {Message}";
}

/// <summary>Who may read or write.</summary>
internal enum SvdAccess
{
    ReadWrite,
    ReadOnly,
    WriteOnly,

    /// <summary>Only the first write after reset counts; cannot be read.</summary>
    WriteOnce,

    /// <summary>Only the first write after reset counts.</summary>
    ReadWriteOnce,
}

/// <summary>What a write does where it does not simply store.</summary>
internal enum SvdWriteEffect
{
    OneToClear,
    OneToSet,
    OneToToggle,
    ZeroToClear,
    ZeroToSet,
    ZeroToToggle,

    /// <summary>Any write clears all bits.</summary>
    Clear,

    /// <summary>Any write sets all bits.</summary>
    Set,

    /// <summary>A write stores.</summary>
    Modify,
}

/// <summary>Which software may reach a register.</summary>
internal enum SvdProtection
{
    Secure,
    NonSecure,
    Privileged,
}

/// <summary>A field, its bits counted from the register's lowest.</summary>
/// <param name="Line">Where it stands.</param>
/// <param name="Name">Its name, the index filled in.</param>
/// <param name="LowBit">Its lowest bit.</param>
/// <param name="WidthBits">Its width.</param>
/// <param name="Access">Who may access it.</param>
/// <param name="WriteEffect">What writing does.</param>
/// <param name="ChangedByReading">Whether a read changes it.</param>
/// <param name="Values">Names of values.</param>
internal sealed record SvdField(
    int Line,
    string Name,
    int LowBit,
    int WidthBits,
    SvdAccess Access,
    SvdWriteEffect WriteEffect,
    bool ChangedByReading,
    ImmutableSortedDictionary<ulong, string> Values
);

/// <summary>A register at its absolute address.</summary>
internal sealed record SvdRegister
{
    /// <summary>Where it stands in the file.</summary>
    public required int Line { get; init; }

    /// <summary>With its peripheral and clusters: <c>TIM2.CR1</c>.</summary>
    public required string Name { get; init; }

    public required ulong Address { get; init; }

    public required int SizeBits { get; init; }

    public required SvdAccess Access { get; init; }

    public required SvdWriteEffect WriteEffect { get; init; }

    public required bool ChangedByReading { get; init; }

    public required ulong Reset { get; init; }

    public required ulong ResetMask { get; init; }

    public required SvdProtection? Protection { get; init; }

    /// <summary>Whether the file calls it another view of what a different register, cluster or peripheral holds.</summary>
    public required bool IsAlternate { get; init; }

    public required ImmutableArray<SvdField> Fields { get; init; }
}

/// <summary>A peripheral with its registers, clusters and dimensions expanded.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Address">Its base address.</param>
/// <param name="Registers">Its registers, in the order of the file.</param>
internal sealed record SvdPeripheral(string Name, ulong Address, ImmutableArray<SvdRegister> Registers);

/// <summary>An interrupt line.</summary>
/// <param name="Name">Its name in the file; no other line has it.</param>
/// <param name="OtherNames">Names that further peripherals on the line give it.</param>
/// <param name="Number">The line's number.</param>
/// <param name="Peripherals">The peripherals that list it.</param>
internal sealed record SvdInterrupt(
    string Name,
    ImmutableArray<string> OtherNames,
    int Number,
    ImmutableArray<string> Peripherals
);

/// <summary>The processor.</summary>
/// <param name="Name">As the standard spells it: <c>CM0PLUS</c>.</param>
/// <param name="PriorityBits">Bits of an interrupt's priority, or null.</param>
internal sealed record SvdCpu(string Name, int? PriorityBits);

/// <summary>A whole file, everything expanded.</summary>
/// <param name="Name">The device's name.</param>
/// <param name="Version">The file's version, or null.</param>
/// <param name="Cpu">The processor, or null where the file does not tell.</param>
/// <param name="Peripherals">The peripherals, in the order of the file.</param>
/// <param name="Interrupts">The interrupts, by number.</param>
internal sealed record SvdDevice(
    string Name,
    string? Version,
    SvdCpu? Cpu,
    ImmutableArray<SvdPeripheral> Peripherals,
    ImmutableArray<SvdInterrupt> Interrupts
);
