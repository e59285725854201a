using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>When something happened: under which loops, in which handler.</summary>
/// <param name="Run">The innermost loop execution of the main program, or null.</param>
/// <param name="IsInHandler">Whether a handler was running.</param>
internal readonly record struct Moment(LoopRun? Run, bool IsInHandler)
{
    public RunContext Context
    {
        get
        {
            if (IsInHandler)
            {
                return RunContext.Handler;
            }

            for (var run = Run; run is not null; run = run.Outer)
            {
                if (run.IsEndless)
                {
                    return RunContext.EndlessLoop;
                }
            }

            return RunContext.StartUp;
        }
    }
}

/// <summary>A wait, as it happened.</summary>
internal sealed record WaitEvent(
    WaitKind Kind,
    SourceRange Range,
    Function Function,
    string? Callee,
    double? Cycles,
    Moment Moment,
    double? Seconds = null
);

/// <summary>A polling loop, as it happened.</summary>
internal sealed record PollEvent(SourceRange Range, CallChain Chain, Register Register, ulong Mask, Moment Moment);

/// <summary>The visits of one sleep instruction, apart by the loops that were past their first pass.</summary>
internal sealed class SleepVisits(SourceRange range, Function function, CallChain chain)
{
    // A point that is reached in more ways than this is looked at as one.
    private const int MaximumContexts = 16;

    private readonly Dictionary<(CallChain, string), SleepVisits> _contexts = [];
    private bool _hasTooManyContexts;

    public SourceRange Range { get; } = range;

    public Function Function { get; } = function;

    public CallChain Chain { get; } = chain;

    /// <summary>The state over all visits under the same later passes; the key is the innermost run past its first pass.</summary>
    public Dictionary<LoopRun, MachineState> Later { get; } = [];

    /// <summary>The state over the visits under no later pass.</summary>
    public MachineState? First { get; set; }

    /// <summary>The state over the visits under no later pass that come straight from a handler's return.</summary>
    public MachineState? Again { get; set; }

    public LoopRun? AnyRun { get; set; }

    /// <summary>The ways in which it is reached; none where there are too many to keep apart.</summary>
    public IReadOnlyCollection<SleepVisits> Contexts => _hasTooManyContexts ? [] : _contexts.Values;

    /// <summary>The visits that come by the same calls in the same mode; null where there are too many.</summary>
    public SleepVisits? Context(CallChain chain, string mode)
    {
        if (!_contexts.TryGetValue((chain, mode), out var context))
        {
            _hasTooManyContexts |= _contexts.Count == MaximumContexts;
            if (_hasTooManyContexts)
            {
                return null;
            }

            context = new SleepVisits(Range, Function, chain);
            _contexts.Add((chain, mode), context);
        }

        return context;
    }
}

/// <summary>All that happens during the run and that rules ask for later; nothing here influences the run.</summary>
internal sealed class EventLog
{
    /// <summary>A log to be thrown away, which knows the same tests.</summary>
    public EventLog Scratch() => new() { Tests = Tests };

    /// <summary>
    /// Counts what was noted of a whole state or of a moment, so that a call in which it happened is run again and not repeated
    /// from memory. Whoever adds such an event counts it here.
    /// </summary>
    public int Unrepeatable { get; set; }

    public List<SleepVisits> Sleeps { get; } = [];

    public Dictionary<SourceRange, SleepVisits> SleepsByPlace { get; } = [];

    public List<LoopRun> Runs { get; } = [];

    public List<WaitEvent> Waits { get; } = [];

    public List<PollEvent> Polls { get; } = [];

    private readonly HashSet<(SourceRange, Register, ulong, Moment)> _knownPolls = [];

    public Dictionary<(LostWriteReason, Register, Decision), LostWrite> LostWrites { get; } = [];

    /// <summary>Places of register writes that had an effect at least once: what is lost only sometimes is not proven.</summary>
    public HashSet<(Register, SourceRange)> EffectiveWrites { get; } = [];

    /// <summary>Bits that hardware changes and that a write may have cleared, with the moment of it.</summary>
    public HashSet<(Register Register, ulong Mask, Moment Moment)> FlagClears { get; } = [];

    /// <summary>Bits of registers that writes changed or may have changed, by place; those of start-up apart.</summary>
    public Dictionary<(Register Register, SourceRange Range, bool IsStartUp), ulong> Changes { get; } = [];

    /// <summary>What each test looks at that handlers or hardware change.</summary>
    public Dictionary<object, TestSite> Tests { get; private init; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>The tests before each sleep instruction and way to it, over all visits; null for one that is no longer there.</summary>
    public Dictionary<
        (SourceRange Sleep, CallChain Chain),
        Dictionary<Expression, SeenTest?>
    > TestsBeforeSleep { get; } = [];

    public Dictionary<Register, ulong> ReadMasks { get; } = [];

    public HashSet<Register> Touched { get; } = [];

    public Dictionary<Condition, (Tristate Held, List<Decision> Decisions)> Latched { get; } = [];

    public Dictionary<(string Id, string Message), AnalysisLimit> Limits { get; } = [];

    public void Limit(string id, string message, SourceRange? range, bool isIncomplete) =>
        Limits.TryAdd((id, message), new AnalysisLimit(id, message, range, isIncomplete));

    public void Note(PollEvent poll)
    {
        if (_knownPolls.Add((poll.Range, poll.Register, poll.Mask, poll.Moment)))
        {
            Polls.Add(poll);
        }
    }

    public void NoteRead(Register register, ulong mask) =>
        ReadMasks[register] = ReadMasks.GetValueOrDefault(register) | mask;
}
