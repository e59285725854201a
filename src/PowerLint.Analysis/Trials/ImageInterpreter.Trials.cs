using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    // A trial is a question beside the run, and may not take its steps.
    private const long TrialSteps = 1_000_000;
    private const int TrialPasses = 100_000;

    private TickTrial? _trial;
    private long _stepLimit;

    /// <summary>
    /// How many wake-ups by an interrupt go by, in the endless loop, from one that makes the program work to the next; null where
    /// that is not known.
    /// </summary>
    public int? WakesPerWork(LoopRun run, Interrupt interrupt)
    {
        if (
            run is not { Loop: { } loop, FirstHead: { } head }
            || !_handlers.TryGetValue(interrupt, out var handler)
            || _activeHandlers.Count > 0
        )
        {
            return null;
        }

        var trial = new TickTrial(interrupt, handler);
        var state = head.Copy();
        (state.Tests, state.Idle, state.NeedsInterleaving) = ([], null, false);
        // Nothing but the tick has come since reset.
        foreach (var (place, writes) in _handlerWrites)
        {
            Reset(place, writes, state);
        }

        Try(trial, new Frame(run.Chain, run.Depth), () => RepeatLoop(loop, state, trial));
        return trial.WakesPerWork;
    }

    private void Reset(SharedPlace place, HandlerWrites writes, MachineState state)
    {
        if (writes.Value is IntegerValue { Bits: var bits } && bits % 8 == 0)
        {
            var untouched = new MachineState
            {
                Memory = PersistentMap<MemoryCell>.Empty,
                Registers = PersistentMap<RegisterByte>.Empty,
            };
            var start = _memory.Read(untouched, place.Region, place.Offset, bits / 8);
            _memory.Write(state, place.Region, place.Offset, bits / 8, start);
        }
    }

    private void RepeatLoop(Loop loop, MachineState head, TickTrial trial)
    {
        for (var pass = 0; pass < TrialPasses && !trial.IsOver; pass++)
        {
            var wakes = trial.Wakes;
            if (RunPass(loop, head).Next is not { } next)
            {
                return;
            }

            head = next;
            trial.IsAbandoned |= trial.Wakes == wakes;
        }
    }

    /// <summary>One pass of a loop: the state that begins the next one, and whether some state left it.</summary>
    private (MachineState? Next, bool Left) RunPass(Loop loop, MachineState head)
    {
        MachineState? next = head;
        var left = false;
        if (loop is { TestsAfterBody: false, Condition: { } first })
        {
            (next, var leaves) = Branch(first, head);
            left = leaves is not null;
        }

        _scope = new JumpScope();
        next = Join(Execute(loop.Body, next), _scope.Continued);
        left |= _scope.Broken is not null || _frame.Returned is not null;
        if (next is not null && loop.Step is not null)
        {
            Evaluate(loop.Step, next);
        }

        if (next is { } tested && loop is { TestsAfterBody: true, Condition: { } last })
        {
            (next, var leaves) = Branch(last, tested);
            left |= leaves is not null;
        }

        return (next, left);
    }

    /// <summary>In a trial a sleep ends by the tick, again and again while its handler puts the CPU back to sleep.</summary>
    private MachineState? SleepInTrial(MachineState state, TickTrial trial)
    {
        MachineState? asleep = state.Copy();
        asleep.Tests = [];
        while (asleep is not null)
        {
            trial.IsAbandoned |= trial.OpenWays > 0 || Holds(asleep, trial.Interrupt.Enabled) == Tristate.No;
            trial.NoteSleep(asleep, (a, b) => IsIncluded(a, b) && IsIncluded(b, a));
            if (trial.IsOver)
            {
                return null;
            }

            asleep = RunHandler(trial.Interrupt, trial.Handler, asleep.Copy());
            if (asleep is not null && SleepsOnExit(asleep) is var again && again != Tristate.Yes)
            {
                trial.IsAbandoned |= again == Tristate.Maybe;
                return asleep;
            }
        }

        return null;
    }

    /// <summary>
    /// How many ticks it takes until a loop without effects is left whose condition looks at what periodic handlers count; null
    /// where that is not known.
    /// </summary>
    private (int Ticks, Interrupt Interrupt)? TicksUntilLeft(Loop loop, MachineState entry)
    {
        var ticks = TicksIn(loop.Condition).Distinct().ToArray();
        if (ticks.Length == 0)
        {
            return null;
        }

        var (interrupt, handler) = _handlers.FirstOrDefault(bound =>
            Array.TrueForAll(ticks, place => _handlerWrites[place].Handlers.Contains(bound.Value))
        );
        if (handler is null)
        {
            return null;
        }

        int? most = null;
        foreach (var startsHigh in (ReadOnlySpan<bool>)[false, true])
        {
            var trial = new TickTrial(interrupt, handler);
            int? taken = null;
            if (AtTick(ticks, startsHigh, entry) is { } state)
            {
                Try(trial, new Frame(_frame.Chain, _frame.Depth), () => taken = CountTicks(loop, state, trial));
            }

            most = taken > (most ?? 0) ? taken : most;
        }

        return most is { } count ? (count, interrupt) : null;
    }

    private IEnumerable<SharedPlace> TicksIn(Expression? condition)
    {
        switch (condition)
        {
            case LogicalOperation both:
                return TicksIn(both.Left).Concat(TicksIn(both.Right));
            case UnaryOperation { Operand: LogicalOperation inner }:
                return TicksIn(inner);
            case null:
                return [];
            default:
                return Events.Tests.TryGetValue(condition, out var site)
                    ? site.Places.Where(place => _handlerWrites.TryGetValue(place, out var writes) && IsTick(writes))
                    : [];
        }
    }

    // The least and the greatest value that a counter can have here, and the same in the locals that hold copies of it.
    private MachineState? AtTick(SharedPlace[] ticks, bool startsHigh, MachineState entry)
    {
        var state = entry.Copy();
        foreach (var place in ticks)
        {
            if (
                _handlerWrites[place].Value is not IntegerValue { Bits: var bits }
                || bits % 8 != 0
                || _memory.Read(state, place.Region, place.Offset, bits / 8) is not IntegerValue value
            )
            {
                return null;
            }

            var start = IntegerValue.Constant(bits, startsHigh ? value.Maximum : value.Minimum);
            _memory.Write(state, place.Region, place.Offset, bits / 8, start);
            foreach (var copy in entry.Tests.Where(test => test.Node is Region))
            {
                if (
                    Events.Tests[copy.Node].Places.SetEquals([place])
                    && copy.Node is Region { SizeBytes: > 0 and <= 8 } local
                )
                {
                    var width = (int)local.SizeBytes;
                    _memory.Write(state, local, 0, width, IntegerArithmetic.Convert(start, 8 * width, false));
                }
            }
        }

        state.NeedsInterleaving = false;
        return state;
    }

    private int? CountTicks(Loop loop, MachineState entry, TickTrial trial)
    {
        var state = entry;
        for (var tick = 0; tick < TrialPasses; tick++)
        {
            var (next, left) = RunPass(loop, state);
            if (left || next is null)
            {
                return next is null && !trial.IsAbandoned ? tick : null;
            }

            if (RunHandler(trial.Interrupt, trial.Handler, next.Copy()) is not { } after)
            {
                return null;
            }

            state = after;
        }

        return null;
    }

    // While both sides of a branch are run, one after the other, a sleep in either would be counted as if it followed the other.
    private void OpenWays(bool isOpen, int change)
    {
        if (isOpen && _trial is not null)
        {
            _trial.OpenWays += change;
        }
    }

    /// <summary>Runs a trial and leaves no trace of it.</summary>
    private void Try(TickTrial trial, Frame frame, Action run)
    {
        var kept = (_frame, _scope, _run, _effects, _sawOpenCondition, _reads, _sleeps, Events, _handlersSleep);
        var reads = _volatileReads.ToArray();
        var recording = _recording;
        Watch(null);
        (_frame, _scope, _run, _reads, Events) = (frame, new JumpScope(), null, null, Events.Scratch());
        (_trial, _stepLimit) = (trial, Math.Min(_options.StepBudget, _steps + TrialSteps));
        var steps = _steps;
        try
        {
            run();
        }
        catch (StepBudgetExceededException)
        {
            trial.IsAbandoned = true;
        }

        (_trial, _stepLimit, _steps) = (null, _options.StepBudget, steps);
        (_frame, _scope, _run, _effects, _sawOpenCondition, _reads, _sleeps, Events, _handlersSleep) = kept;
        _volatileReads.Clear();
        _volatileReads.UnionWith(reads);
        _activeHandlers.Clear();
        Watch(recording);
    }

    // Counting on, and setting what is counted or shared with handlers to a constant, is no work.
    private bool IsCountingStore(TickTrial trial, PointerTarget target, object node)
    {
        if (target.Region.Global is null || !target.Offset.IsConstant)
        {
            return target.Region.Global is null;
        }

        var place = new SharedPlace(target.Region, (long)target.Offset.Minimum);
        if (Counts(node))
        {
            trial.Counters.Add(place);
            return true;
        }

        return node is Assignment { Operator: null } set
            && WithoutConversions(set.Value) is IntegerConstant
            && (trial.Counters.Contains(place) || _handlerWrites.ContainsKey(place));
    }

    // Setting up the sleep, clearing the flag of the interrupt that came, and writing what is there already is no work.
    private bool IsWorkOnRegister(
        TickTrial trial,
        ulong address,
        int width,
        IntegerValue written,
        KnownBits before,
        KnownBits after
    )
    {
        for (var i = 0; i < width; i++)
        {
            if (_map.SlotAt(address + (ulong)i) is not { } slot)
            {
                return true;
            }

            var register = slot.Register;
            if (_map.SleepControls.Contains(register) || ClearsFlagOf(trial.Interrupt, register))
            {
                continue;
            }

            var ones = ((written.Value | ~written.Known) >> (8 * i)) & 0xFF;
            var changed =
                (((before.Value ^ after.Value) | ~before.Known | ~after.Known) >> (8 * i))
                & ~(register.HardwareChanged >> slot.Shift)
                & 0xFF;
            var strobes = ones & (register.HardwareChanged >> slot.Shift) & 0xFF;
            if (
                register.Kind == RegisterKind.Data
                || changed != 0
                || strobes != 0
                || (ones != 0 && _map.Aliases[register].Any())
            )
            {
                return true;
            }
        }

        return false;
    }

    // A flag is cleared in its own register, or by one that clears that.
    private bool ClearsFlagOf(Interrupt interrupt, Register register) =>
        interrupt.Flags.Any(flag =>
            flag.Register == register
            || _map.Aliases[register].Any(alias => alias.Effect == AliasEffect.Clear && alias.Target == flag.Register)
        );
}
