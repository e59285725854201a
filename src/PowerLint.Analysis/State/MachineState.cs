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

    /// <summary>A write has just reset the part; whoever made it ends the way.</summary>
    public bool IsReset { get; set; }

    /// <summary>No execution gets here.</summary>
    public bool IsUnreachable { get; set; }

    /// <summary>Tests of variables that handlers write, since the last sleep.</summary>
    public ImmutableArray<SeenTest> Tests { get; set; } = [];

    /// <summary>Interrupts have just been switched on by an instruction whose successor still runs before any of them.</summary>
    public bool IsShielded { get; set; }

    /// <summary>Ways of this pass without sleep and work; null where there are none.</summary>
    public IdlePass? Idle { get; set; }

    // Written out: the runtime's own way of cloning costs several times as much, and states are copied all the time.
    public MachineState Copy() =>
        new()
        {
            Memory = Memory,
            Registers = Registers,
            UnknownCallees = UnknownCallees,
            OpenLock = OpenLock,
            NeedsInterleaving = NeedsInterleaving,
            IsReset = IsReset,
            IsUnreachable = IsUnreachable,
            Tests = Tests,
            IsShielded = IsShielded,
            Idle = Idle,
        };

    /// <summary>Whether all but memory and registers is the same.</summary>
    public bool HasSameContext(MachineState other) =>
        UnknownCallees.SequenceEqual(other.UnknownCallees)
        && Equals(OpenLock, other.OpenLock)
        && NeedsInterleaving == other.NeedsInterleaving
        && IsUnreachable == other.IsUnreachable;

    /// <summary>Whether the main program has tested the same, and come as far in its pass.</summary>
    public bool HasSameTests(MachineState other) =>
        SeenTests.AreSame(Tests, other.Tests)
        && IsShielded == other.IsShielded
        && IdlePass.IsIncluded(Idle, other.Idle)
        && IdlePass.IsIncluded(other.Idle, Idle);

    /// <summary>Keeps what a handler leaves as it is.</summary>
    public void KeepTestsOf(MachineState interrupted) =>
        (Tests, IsShielded, Idle) = (interrupted.Tests, interrupted.IsShielded, interrupted.Idle);

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
        Tests = other.Tests;
        IsShielded = other.IsShielded;
        Idle = other.Idle;
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
