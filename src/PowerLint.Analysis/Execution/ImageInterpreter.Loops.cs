using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>How far the execution of a loop has come: the heads that it has seen, and the one that it widens.</summary>
internal sealed class LoopProgress(LoopRun run)
{
    public LoopRun Run { get; } = run;

    public List<MachineState> Heads { get; } = [];

    public MachineState? Accumulated { get; set; }

    public int OpenPasses { get; set; }

    public int Passes { get; set; }

    public int Joins { get; set; }

    /// <summary>Steps that had been made when the latest pass began.</summary>
    public long StepsBefore { get; set; }
}

internal sealed partial class ImageInterpreter
{
    // A loop whose condition stays decided is run as it is; this many passes are more than any table or port has.
    private const int MaximumDecidedPasses = 200_000;

    // Passes of a loop with an open condition (or of an endless one) that are told apart before they are joined: enough for
    // the bits of a port, or the states of a small state machine.
    private const int MaximumOpenPasses = 40;

    private const int MaximumRememberedHeads = 48;

    // Joins before bounds are widened: the first passes often settle by themselves.
    private const int JoinsBeforeWidening = 3;

    // An open pass of so many steps is that of a large program's endless loop: to tell one more of them apart is not worth its time.
    private const int LongPass = 50_000;

    // The same for those.
    private const int JoinsBeforeWideningLong = 1;

    // Open loops within open loops multiply: the longer the run, the fewer of their passes are told apart.
    private int OpenPassLimit =>
        IsHurried ? 3
        : _steps > _options.StepBudget / 40 ? 4
        : _steps > _options.StepBudget / 100 ? 10
        : MaximumOpenPasses;

    private MachineState? ExecuteLoop(Loop loop, MachineState? state)
    {
        if (state is not null && SkipCountedLoop(loop, state) is { } skipped)
        {
            return LetHandlersIn(skipped);
        }

        var outer = _scope;
        var progress = new LoopProgress(OpenRun(loop, loop));
        var watch = new PassWatch(this);
        var returnedBefore = _frame.Returned;
        var (waitsBefore, effectsBefore) = (Events.Waits.Count, _effects);
        MachineState? exits = null;
        var isFirst = true;
        var entry = state;
        var openWays = 0;
        while (true)
        {
            var isOpen = watch.IsOpen || (!isFirst && loop.Condition is null or IntegerConstant);
            if (state is not null)
            {
                state = NextHead(progress, state, isOpen);
            }

            if (state is null && !(isFirst && _frame.Jumps.Count > 0))
            {
                break;
            }

            watch.Begin();
            var mayTest = !loop.TestsAfterBody;
            if (mayTest && state is not null && loop.Condition is not null)
            {
                var tested = Test(loop.Condition, state, exits);
                (state, exits) = (tested.GoesOn, tested.Exits);
            }

            _scope = new JumpScope();
            state = Execute(loop.Body, state);
            state = Join(state, _scope.Continued);
            exits = Join(exits, _scope.Broken);
            _scope = outer;
            if (state is not null && loop.Step is not null)
            {
                Evaluate(loop.Step, state);
                state = LetHandlersIn(state);
            }

            if (state is not null && loop.TestsAfterBody && loop.Condition is not null)
            {
                var tested = Test(loop.Condition, state, exits);
                (state, exits) = (tested.GoesOn, tested.Exits);
            }

            watch.End(loop, exits is not null || !ReferenceEquals(returnedBefore, _frame.Returned));
            if (isFirst && watch.IsOpen && exits is not null && _effects == effectsBefore && entry is not null)
            {
                NoteTickWait(loop, entry);
            }

            if (isFirst && watch.IsOpen && _trial is not null)
            {
                _trial.OpenWays++;
                openWays++;
            }

            isFirst = false;
        }

        if (_trial is not null)
        {
            _trial.OpenWays -= openWays;
        }

        GatherWaits(loop, waitsBefore, effectsBefore, watch.WasOpen || exits is null);
        watch.Close();
        CloseRun(
            progress.Run,
            wasLeft: exits is not null || !ReferenceEquals(returnedBefore, _frame.Returned) || _frame.Jumps.Count > 0
        );
        return exits;
    }

    private (MachineState? GoesOn, MachineState? Exits) Test(
        Expression condition,
        MachineState state,
        MachineState? exits
    )
    {
        var (goesOn, leaves) = Branch(condition, state);
        return (
            goesOn is null ? null : LetHandlersIn(goesOn),
            Join(exits, leaves is null ? null : LetHandlersIn(leaves))
        );
    }

    /// <summary>The state in which the next pass starts, or null where all that it could do has been seen.</summary>
    private MachineState? NextHead(LoopProgress progress, MachineState state, bool isOpen)
    {
        var run = progress.Run;
        if (!IsInHandler && run.Outer is null)
        {
            NoteIdlePass(run, state);
            state = state.Copy();
            state.Idle = IdlePass.Fresh;
        }

        var isLong = isOpen && progress.Passes > 0 && _steps - progress.StepsBefore > LongPass;
        progress.StepsBefore = _steps;
        run.Pass++;
        progress.Passes++;
        progress.OpenPasses += isOpen ? 1 : 0;
        if (progress.Accumulated is { } accumulated)
        {
            if (IsIncluded(state, accumulated))
            {
                return null;
            }

            progress.Joins++;
            var tellsApart = isLong ? JoinsBeforeWideningLong : JoinsBeforeWidening;
            state =
                progress.Joins > tellsApart
                    ? Widen(accumulated, state, isFar: isLong && progress.Joins > tellsApart + 1)
                    : Join(accumulated, state)!;
            progress.Accumulated = state;
        }
        else
        {
            for (var i = progress.Heads.Count - 1; i >= 0; i--)
            {
                if (IsIncluded(state, progress.Heads[i]))
                {
                    return null;
                }
            }

            var isSpent =
                isLong
                || progress.OpenPasses > OpenPassLimit
                || progress.Passes > (IsHurried ? 300 : MaximumDecidedPasses);
            if (isSpent)
            {
                progress.Accumulated = state;
            }
            else
            {
                if (progress.Heads.Count == MaximumRememberedHeads)
                {
                    progress.Heads.RemoveAt(0);
                }

                progress.Heads.Add(state);
            }
        }

        if (!IsInHandler)
        {
            run.FirstHead ??= run.Outer is null ? state : null;
            run.Head = Join(run.Head, state);
            if (run.Pass > 0)
            {
                run.LaterHead = Join(run.LaterHead, state);
            }
        }

        SpendCycles(state, 2);
        return state.Copy();
    }

    // More kinds of such passes than this are no different to people.
    private const int MaximumIdlePasses = 16;

    private static void NoteIdlePass(LoopRun run, MachineState state)
    {
        if (
            run.Pass >= 0
            && state.Idle is { Tests.IsEmpty: false } idle
            && run.IdlePasses.Count < MaximumIdlePasses
            && !run.IdlePasses.Exists(known => IdlePass.IsIncluded(idle, known))
        )
        {
            run.IdlePasses.Add(idle);
        }
    }

    private LoopRun OpenRun(Loop? loop, Statement place)
    {
        var run = new LoopRun(loop, place, _frame.Chain, _frame.Depth, _run);
        if (!IsInHandler)
        {
            Events.Runs.Add(run);
            _run = run;
        }

        return run;
    }

    private void CloseRun(LoopRun run, bool wasLeft)
    {
        run.WasLeft |= wasLeft;
        if (!IsInHandler)
        {
            _run = run.Outer;
            if (run.WasLeft)
            {
                // Only the endless loop's heads are asked for; others would keep their states alive.
                run.Head = run.LaterHead = run.FirstHead = null;
            }
        }
    }

    /// <summary>Watches the passes of a loop: one that does nothing but look at hardware is a polling loop.</summary>
    private sealed class PassWatch(ImageInterpreter interpreter)
    {
        private readonly bool _outerOpen = interpreter._sawOpenCondition;
        private readonly (Devices.Register Register, ulong Mask)[] _outerReads = [.. interpreter._volatileReads];
        private readonly HashSet<(Devices.Register Register, ulong Mask)> _allReads = [];
        private readonly HashSet<(Devices.Register Register, ulong Mask)> _noted = [];
        private int _effectsBefore;
        private bool _anyOpen;

        public bool IsOpen { get; private set; }

        /// <summary>Whether any pass left a condition open.</summary>
        public bool WasOpen => _anyOpen;

        public void Begin()
        {
            interpreter._sawOpenCondition = false;
            interpreter._volatileReads.Clear();
            _effectsBefore = interpreter._effects;
        }

        public void End(Loop loop, bool canLeave)
        {
            IsOpen = interpreter._sawOpenCondition;
            _anyOpen |= IsOpen;
            if (IsOpen && canLeave && interpreter._effects == _effectsBefore)
            {
                foreach (var (register, mask) in interpreter._volatileReads)
                {
                    interpreter.NotePolling(loop, register, mask);
                    _noted.Add((register, mask));
                }
            }

            _allReads.UnionWith(interpreter._volatileReads);
        }

        public void Close()
        {
            interpreter._sawOpenCondition = _outerOpen | _anyOpen;
            interpreter._volatileReads.Clear();
            interpreter._volatileReads.UnionWith(_outerReads);

            // A loop around a wait does not wait for the same flag itself.
            _allReads.ExceptWith(_noted);
            interpreter._volatileReads.UnionWith(_allReads);
        }
    }

    private void NotePolling(Loop loop, Devices.Register register, ulong mask)
    {
        var (range, _, chain) = _frame.Chain.UserPlace(loop.Range);
        AddPoll(new PollEvent(range, chain, register, mask, Now));
    }

    private void AddPoll(PollEvent poll)
    {
        _recording?.Polls.Add(poll);
        Events.Note(poll);
    }
}
