using System.Collections.Immutable;
using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>What one execution of a call did, so that it can be done again without running the body.</summary>
internal sealed class CallSummary
{
    private readonly MachineState _entry;
    private readonly MachineState? _exit;
    private readonly Footprint _footprint;
    private readonly AbstractValue[] _arguments;
    private readonly List<(ulong Key, MemoryCell? Cell)> _cells = [];
    private readonly List<(ulong Address, RegisterByte? Byte)> _bytes = [];

    public CallSummary(AbstractValue[] arguments, MachineState entry, MachineState? exit, Footprint footprint)
    {
        _arguments = arguments;
        _entry = entry;
        _exit = exit;
        _footprint = footprint;
        if (exit is null)
        {
            return;
        }

        PersistentMap<MemoryCell>.AllDifferences(
            entry.Memory,
            exit.Memory,
            (key, _, after) =>
            {
                _cells.Add((key, after));
                return true;
            }
        );
        PersistentMap<RegisterByte>.AllDifferences(
            entry.Registers,
            exit.Registers,
            (address, _, after) =>
            {
                _bytes.Add((address, after));
                return true;
            }
        );
    }

    public Footprint Footprint => _footprint;

    public required AbstractValue Value { get; init; }

    /// <summary>What it added to the count of effects.</summary>
    public required int Effects { get; init; }

    public required bool SawOpenCondition { get; init; }

    public required ImmutableArray<(Register Register, ulong Mask)> VolatileReads { get; init; }

    public required ImmutableArray<WaitEvent> Waits { get; init; }

    public required ImmutableArray<PollEvent> Polls { get; init; }

    /// <summary>A handler ran it: what the main program has tested is nothing to it.</summary>
    public required bool IsOfHandler { get; init; }

    /// <summary>How many objects and addresses handlers were known to share when it ran.</summary>
    public required (int Regions, int Addresses) SharedPlaces { get; init; }

    /// <summary>Whether a call with these arguments in this state does the same.</summary>
    public bool Fits(AbstractValue[] arguments, MachineState state)
    {
        if (
            arguments.Length != _arguments.Length
            || !_entry.HasSameContext(state)
            || (!IsOfHandler && !_entry.HasSameTests(state))
        )
        {
            return false;
        }

        for (var i = 0; i < arguments.Length; i++)
        {
            if (!AbstractValue.AreSame(arguments[i], _arguments[i]))
            {
                return false;
            }
        }

        return PersistentMap<RegisterByte>.AllDifferences(
                _entry.Registers,
                state.Registers,
                (address, then, now) => !_footprint.CoversAddress(address) || RegisterByte.AreSame(then, now)
            ) && _footprint.AreSame(_entry.Memory, state.Memory);
    }

    /// <summary>The state after the call; null where it does not come back.</summary>
    public MachineState? Apply(MachineState state)
    {
        if (_exit is null)
        {
            return null;
        }

        var after = _exit.Copy();
        var memory = state.Memory;
        foreach (var (key, cell) in _cells)
        {
            memory = cell is null ? memory.Remove(key) : memory.Set(key, cell);
        }

        var registers = state.Registers;
        foreach (var (address, value) in _bytes)
        {
            registers = value is null ? registers.Remove(address) : registers.Set(address, value);
        }

        after.Memory = memory;
        after.Registers = registers;
        if (IsOfHandler)
        {
            after.KeepTestsOf(state);
        }

        return after;
    }
}

/// <summary>What tells calls by one chain apart besides the state.</summary>
/// <param name="Depth">The frame depth.</param>
/// <param name="Interrupting">The handler that runs, or null.</param>
/// <param name="IsInLoop">Whether the main program is in a loop.</param>
/// <param name="HandlersSleep">Whether handlers have put the CPU to sleep.</param>
internal readonly record struct CallMoment(int Depth, Function? Interrupting, bool IsInLoop, bool HandlersSleep);

/// <summary>The summaries of one function as called by one chain of calls.</summary>
internal sealed class CallMemory(CallMoment moment)
{
    // A call that is made over and over in states that differ where it looks is not worth remembering.
    private const int MaximumRecordings = 24;
    private const int MaximumSummaries = 6;

    private readonly List<CallSummary> _summaries = [];
    private int _calls;
    private int _recordings;
    private int _hits;

    public CallMoment Moment => moment;

    /// <summary>Whether this call is worth recording: not the first one, and not where recording has never paid.</summary>
    public bool IsWorthRecording => _calls > 1 && (_hits * 4 >= _recordings - MaximumRecordings);

    public CallSummary? Find(AbstractValue[] arguments, MachineState state, (int, int) sharedPlaces)
    {
        _calls++;
        for (var i = _summaries.Count - 1; i >= 0; i--)
        {
            var summary = _summaries[i];
            if (summary.SharedPlaces == sharedPlaces && summary.Fits(arguments, state))
            {
                _hits++;
                return summary;
            }
        }

        return null;
    }

    public void Add(CallSummary summary)
    {
        _recordings++;
        if (_summaries.Count == MaximumSummaries)
        {
            _summaries.RemoveAt(0);
        }

        _summaries.Add(summary);
    }
}
