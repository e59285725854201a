using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    /// <summary>
    /// Executes the sleep instruction: notes the state, then gives what the program finds when it goes on: one of the handlers
    /// that can end the sleep has run. Null where nothing ends it.
    /// </summary>
    private MachineState? ExecuteSleep(object node, SourceRange range, MachineState state, bool isForEvent = false)
    {
        if (_trial is { } trial)
        {
            return SleepInTrial(state, trial);
        }

        NoteEffect(state);
        Events.Unrepeatable++;
        NoteTestsBeforeSleep(range, state, isForEvent);
        _sleeps++;
        var asleep = LetHandlersIn(state);
        if (asleep is null)
        {
            return null;
        }

        state = asleep;
        NoteSleep(range, state);
        NoteLatched(state, null, default, null);
        var enabled = Holds(state, _device.Sleep.Enable);
        MachineState? after = enabled == Tristate.Yes ? null : state.Copy();
        if (enabled == Tristate.Maybe && _device.Sleep.EnableField is { WidthBits: 1 } bit)
        {
            // Where it did not sleep the enable bit was 0, where it did, 1.
            _registers.Assume(after!, bit, isOne: false);
            state = state.Copy();
            _registers.Assume(state, bit, isOne: true);
        }

        if (enabled != Tristate.No)
        {
            after = Join(after, WakeUp(range, state));
        }

        if (after is null)
        {
            return null;
        }

        after = after.Copy();
        ClearBits(_device.Sleep.ClearedBySleep, node, range, after);
        after.Tests = [];
        after.NeedsInterleaving = true;
        return LetHandlersIn(after);
    }

    /// <summary>Executes the instruction that waits for an event. An interrupt since the last one leaves its event behind: it does not sleep then.</summary>
    private MachineState? ExecuteWaitForEvent(object node, SourceRange range, MachineState state)
    {
        if (_device.Sleep.WaitsForEvent is not { } waits)
        {
            return ExecuteSleep(node, range, state, isForEvent: true);
        }

        // The bit is up for the length of the wait; what waits for interrupts finds it down.
        _registers.SetBit(state, waits, isOne: true, DecisionSet.Reset);
        var awake = ExecuteSleep(node, range, state, isForEvent: true);
        if (awake is not null)
        {
            _registers.SetBit(awake, waits, isOne: false, DecisionSet.Reset);
        }

        return awake;
    }

    /// <summary>Goes to sleep where a write to a register does so: a power-off register takes effect at once.</summary>
    private void SleepByWrite(ulong address, int width, object node, SourceRange range, MachineState state)
    {
        if (_device.Sleep.Trigger is not { } trigger || !IsSleepTrigger(address, width))
        {
            return;
        }

        var sleeps = Holds(state, trigger);
        if (sleeps != Tristate.No)
        {
            var awake = ExecuteSleep(node, range, state.Copy());
            state.Become(sleeps == Tristate.Yes ? awake : Join(awake, state.Copy()));
        }
    }

    private bool IsSleepTrigger(ulong address, int width)
    {
        for (var i = 0; i < width; i++)
        {
            if (_map.SlotAt(address + (ulong)i) is { } slot && _map.SleepTriggers.Contains(slot.Register))
            {
                return true;
            }
        }

        return false;
    }

    private MachineState? WakeUp(SourceRange range, MachineState state)
    {
        var (after, asleepAgain) = RunWaking(state);
        if (asleepAgain is null)
        {
            return after;
        }

        // The handlers' way back to sleep does not pass through the main program; what they find there from the second time on
        // is a state of its own, like that of a loop's later passes.
        var later = asleepAgain;
        for (var rounds = 0; ; rounds++)
        {
            NoteSleep(range, later, isAgain: true);
            (var awake, asleepAgain) = RunWaking(later);
            after = Join(after, awake);
            if (asleepAgain is null || IsIncluded(asleepAgain, later))
            {
                return after;
            }

            later = rounds > 3 ? Widen(later, asleepAgain) : Join(later, asleepAgain)!;
        }
    }

    private (MachineState? Awake, MachineState? AsleepAgain) RunWaking(MachineState state)
    {
        var interruptsOn = InterruptsOn(state);
        // A mode that ends in a reset goes on nowhere.
        var modes = _device
            .SleepModes.Where(mode => mode.Resumes && Holds(state, mode.Selected) != Tristate.No)
            .Select(mode => mode.Name)
            .ToHashSet(StringComparer.Ordinal);
        var withoutEnable = _device
            .SleepModes.Where(mode => !mode.WakingNeedsGlobalEnable && modes.Contains(mode.Name))
            .Select(mode => mode.Name)
            .ToHashSet(StringComparer.Ordinal);
        MachineState? awake = null;
        MachineState? asleepAgain = null;
        var pending = new List<(Interrupt Interrupt, Function Handler)>();
        foreach (var interrupt in _device.Interrupts)
        {
            if (Holds(state, interrupt.Enabled) == Tristate.No)
            {
                continue;
            }

            if (!CanWake(interrupt, modes, state))
            {
                if (_handlers.TryGetValue(interrupt, out var late) && !_activeHandlers.Contains(late))
                {
                    pending.Add((interrupt, late));
                }

                continue;
            }

            if (!interrupt.HasVector)
            {
                // An event ends the sleep, and the program goes on behind it.
                awake = Join(awake, state.Copy());
                continue;
            }

            if (
                interruptsOn != Tristate.Yes
                && CanWake(interrupt, withoutEnable, state)
                && Holds(state, _device.Sleep.MaskedInterruptsWake()) != Tristate.No
            )
            {
                // The core wakes and goes on without the handler.
                awake = Join(awake, state.Copy());
            }

            if (interruptsOn != Tristate.No && _handlers.TryGetValue(interrupt, out var handler))
            {
                if (_activeHandlers.Count < MaximumHandlerNesting && !_activeHandlers.Contains(handler))
                {
                    GoOn(RunHandler(interrupt, handler, state.Copy()), _clearedAtReturn);
                }
                else
                {
                    GoOn(state.Copy(), 0);
                }
            }
        }

        // An interrupt whose source stands still in this mode can have come up on the way to sleep, between the instruction that
        // switches interrupts on and this one, say: then it ends the sleep before it begins. Where nothing else would, the part
        // is taken to sleep for good all the same.
        if (awake is not null && interruptsOn != Tristate.No && _activeHandlers.Count < MaximumHandlerNesting)
        {
            foreach (var (interrupt, handler) in pending)
            {
                GoOn(RunHandler(interrupt, handler, state.Copy()), _clearedAtReturn);
            }
        }

        return (awake, asleepAgain);

        void GoOn(MachineState? returned, ulong cleared)
        {
            if (returned is null)
            {
                return;
            }

            var sleepsOn = SleepsOnExit(returned);
            if (sleepsOn != Tristate.Yes)
            {
                awake = Join(awake, Returned(state, returned, cleared, isAsleep: false));
            }

            if (sleepsOn != Tristate.No)
            {
                asleepAgain = Join(asleepAgain, Returned(state, returned, cleared, isAsleep: true));
            }
        }
    }

    private Tristate SleepsOnExit(MachineState state) =>
        _device.Sleep.SleepOnExit is { } bit ? Holds(state, IsOne(bit)) : Tristate.No;

    private MachineState Assuming(MachineState returned, bool isAsleep)
    {
        if (_device.Sleep.SleepOnExit is not { } bit)
        {
            return returned;
        }

        returned = returned.Copy();
        _registers.Assume(returned, bit, isAsleep);
        return returned;
    }

    private bool CanWake(Interrupt interrupt, HashSet<string> modes, MachineState state) =>
        interrupt.Wakes.Any(wake => wake.Modes.Any(modes.Contains) && Holds(state, wake.When) != Tristate.No);

    private void NoteSleep(SourceRange range, MachineState state, bool isAgain = false)
    {
        Events.Unrepeatable++;
        for (var run = _run; run is not null; run = run.Outer)
        {
            run.HasSleep = true;
        }

        var (place, function, chain) = _frame.Chain.UserPlace(range);
        if (!Events.SleepsByPlace.TryGetValue(place, out var visits))
        {
            visits = new SleepVisits(place, function, chain);
            Events.SleepsByPlace.Add(place, visits);
            Events.Sleeps.Add(visits);
        }

        NoteVisit(visits, state, isAgain);
        if (visits.Context(chain, ModeKey(state)) is { } context)
        {
            NoteVisit(context, state, isAgain);
        }
    }

    private void NoteVisit(SleepVisits visits, MachineState state, bool isAgain)
    {
        visits.AnyRun ??= _run;

        // Which of the loops around turn out endless is known only at the end: visits are kept apart by the runs that are past
        // their first pass.
        LoopRun? later = null;
        for (var run = _run; run is not null; run = run.Outer)
        {
            later = run.Pass > 0 ? run : later;
        }

        if (later is null && isAgain)
        {
            visits.Again = Join(visits.Again, state.Copy());
        }
        else if (later is null)
        {
            visits.First = Join(visits.First, state.Copy());
        }
        else
        {
            visits.Later[later] = Join(visits.Later.GetValueOrDefault(later), state.Copy())!;
        }
    }
}
