using System.Collections.Immutable;
using PowerLint.Devices;

namespace PowerLint.Analysis;

/// <summary>
/// The machine at one point: memory, registers, and the little that the hardware remembers besides. A copy costs nothing:
/// everything in it is immutable and shared.
/// </summary>
internal sealed class MachineState
{
    public required PersistentMap<MemoryCell> Memory { get; set; }

    public required PersistentMap<RegisterByte> Registers { get; set; }

    /// <summary>Functions without a body and other unknown effects on some way here, sorted.</summary>
    public ImmutableArray<string> UnknownCallees { get; set; } = [];

    /// <summary>The change protection that is open, or null.</summary>
    public OpenLock? OpenLock { get; set; }

    /// <summary>Something that a handler may look at has changed since handlers were last let in.</summary>
    public bool NeedsInterleaving { get; set; }

    /// <summary>No execution gets here.</summary>
    public bool IsUnreachable { get; set; }

    public MachineState Copy() => (MachineState)MemberwiseClone();

    /// <summary>Whether all but memory and registers is the same.</summary>
    public bool HasSameContext(MachineState other) =>
        UnknownCallees.SequenceEqual(other.UnknownCallees)
        && Equals(OpenLock, other.OpenLock)
        && NeedsInterleaving == other.NeedsInterleaving
        && IsUnreachable == other.IsUnreachable;

    /// <summary>Takes over another state; null makes this one unreachable.</summary>
    public void Become(MachineState? other)
    {
        if (other is null)
        {
            IsUnreachable = true;
            return;
        }

        Memory = other.Memory;
        Registers = other.Registers;
        UnknownCallees = other.UnknownCallees;
        OpenLock = other.OpenLock;
        NeedsInterleaving = other.NeedsInterleaving;
        IsUnreachable = other.IsUnreachable;
    }
}

/// <summary>A change protection that a key has opened.</summary>
/// <param name="Protection">Which.</param>
/// <param name="CyclesLeft">For how long, in CPU cycles at the least that the code can take.</param>
/// <param name="KeysSeen">How many keys of a sequence have been given.</param>
internal sealed record OpenLock(ChangeProtection Protection, int CyclesLeft, int KeysSeen)
{
    /// <summary>Whether it is open on every path; where not, a protected write may or may not count.</summary>
    public bool IsCertain { get; init; } = true;

    /// <summary>The lock over two paths.</summary>
    public static OpenLock? Join(OpenLock? a, OpenLock? b) =>
        a is null || b is null
            ? (a ?? b) is { } only
                ? only with
                {
                    IsCertain = false,
                }
                : null
            : ProtectionRules.HaveOneKey(a.Protection, b.Protection) && a.KeysSeen == b.KeysSeen
                ? a with
                {
                    CyclesLeft = Math.Max(a.CyclesLeft, b.CyclesLeft),
                    IsCertain = a.IsCertain && b.IsCertain,
                }
                : a with
                {
                    IsCertain = false,
                };
}
