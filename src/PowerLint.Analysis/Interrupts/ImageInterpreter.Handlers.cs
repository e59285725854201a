using System.Collections.Immutable;
using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    // Handlers that let themselves be interrupted nest this deep and no deeper.
    private const int MaximumHandlerNesting = 2;

    // Locals of handlers get depths of their own, so that their addresses do not depend on what was interrupted.
    private const int HandlerDepth = 1000;

    private readonly Dictionary<Interrupt, Function> _handlers = [];
    private readonly Dictionary<Function, CallChain> _handlerChains = [];
    private readonly HashSet<Region> _handlerRegions = [];
    private readonly HashSet<ulong> _handlerAddresses = [];
    private readonly List<Function> _activeHandlers = [];

    // A handler has sent the CPU to sleep at its return: what it sleeps in is whatever state the main program was in.
    private bool _handlersSleep;

    /// <summary>Interrupts that have a handler in the image, by number.</summary>
    public IEnumerable<Interrupt> HandledInterrupts => _device.Interrupts.Where(_handlers.ContainsKey);

    private void BindHandlers()
    {
        foreach (var function in _image.Handlers)
        {
            var handler = function.Handler!;
            // Several sources may share a vector.
            var interrupts = _device.Interrupts.Where(i => Handles(handler, i)).ToArray();
            if (interrupts is [])
            {
                Events.Limit(
                    "unknown-vector",
                    $"{handler.SpelledVector} is no interrupt of {_device.Name}; its handler is not run."
                        + NearestVector(handler.SpelledVector),
                    function.Range,
                    isIncomplete: false
                );
            }
            else
            {
                foreach (var interrupt in interrupts)
                {
                    _handlers.TryAdd(interrupt, function);
                }

                _handlerChains.TryAdd(function, CallChain.Enter(function, handler.SpelledVector));
            }
        }

        if (IsMicrocontrollerProfile)
        {
            BindByName();
        }
    }

    private string NearestVector(string spelled) =>
        NearestNames.Of(
            spelled,
            _device.Interrupts.Where(i => i.HasVector).SelectMany(i => i.OtherNames.Prepend(i.Name)),
            count: 1
        )
            is [var nearest]
            ? $" The nearest name is {nearest}."
            : "";

    // A plain function is the handler whose name the part's vector table has for it; not all headers' names tell that they are handlers.
    private void BindByName()
    {
        foreach (var interrupt in _device.Interrupts.Where(i => i.HasVector && !_handlers.ContainsKey(i)))
        {
            foreach (var name in interrupt.OtherNames.Prepend(interrupt.Name))
            {
                if (_image.Named(name) is { } function && _handlers.TryAdd(interrupt, function))
                {
                    _handlerChains.TryAdd(function, CallChain.Enter(function, name));
                    break;
                }
            }
        }
    }

    private static bool Handles(InterruptHandler handler, Interrupt interrupt) =>
        string.Equals(handler.SpelledVector, interrupt.Name, StringComparison.Ordinal)
        || interrupt.OtherNames.Contains(handler.SpelledVector, StringComparer.Ordinal)
        || string.Equals(handler.LinkName, interrupt.Name, StringComparison.Ordinal)
        || interrupt.OtherNames.Contains(handler.LinkName, StringComparer.Ordinal)
        || handler.VectorNumber == interrupt.Number;

    /// <summary>
    /// Between two statements: lets every handler run that may, as often as it likes. What they write joins into the state.
    /// Nothing is done where nothing has changed since that a handler looks at.
    /// </summary>
    private MachineState? LetHandlersIn(MachineState state)
    {
        if (state.IsUnreachable)
        {
            return null;
        }

        if (_trial is not null)
        {
            return state;
        }

        if (!state.NeedsInterleaving || _handlers.Count == 0 || _activeHandlers.Count >= MaximumHandlerNesting)
        {
            return state;
        }

        state.NeedsInterleaving = false;
        if (InterruptsOn(state) == Tristate.No)
        {
            return state;
        }

        var result = state;
        var rounds = 0;
        bool hasChanged;
        do
        {
            hasChanged = false;
            foreach (var interrupt in _device.Interrupts)
            {
                if (
                    !_handlers.TryGetValue(interrupt, out var handler)
                    || _activeHandlers.Contains(handler)
                    || Holds(result, interrupt.Enabled) == Tristate.No
                )
                {
                    continue;
                }

                var after = RunHandler(interrupt, handler, result.Copy());
                if (after is not null && _device.Sleep.StopsCpu is { } stop)
                {
                    after = SleepAtReturn(handler, stop, after);
                }

                if (after is null || IsIncluded(after, result))
                {
                    continue;
                }

                rounds++;
                result = rounds > 3 * _handlers.Count ? Widen(result, after) : Join(result, after)!;
                hasChanged = true;
            }
        } while (hasChanged);

        result.NeedsInterleaving = false;
        return result;
    }

    // Arm's M profile orders handlers by priority: entry and return leave its global mask alone.
    private bool IsMicrocontrollerProfile => _device.Core.StartsWith("cortex-m", StringComparison.Ordinal);

    /// <summary>Runs a handler from its entry to its return; null where it does not return.</summary>
    private MachineState? RunHandler(Interrupt interrupt, Function handler, MachineState state)
    {
        state = ClearAtEntry(interrupt, handler, state);
        var (frame, scope, run, effects, isOpen) = (_frame, _scope, _run, _effects, _sawOpenCondition);
        var reads = _volatileReads.ToArray();
        var openLock = state.OpenLock;
        _activeHandlers.Add(handler);
        state.NeedsInterleaving = false;
        if (_device.Sleep.StatusRegister is { } status)
        {
            EnterWithStatus(state, handler, status);
        }
        else if (handler.Handler is not { EnablesInterruptsAtEntry: true } && !IsMicrocontrollerProfile)
        {
            SetGlobalEnable(state, isOn: false, handler, handler.Range);
        }

        var depth = HandlerDepth * _activeHandlers.Count;
        _scope = new JumpScope();
        var (after, _) = RunOrRepeat(new Frame(_handlerChains[handler], depth), [], state);
        if (after is not null)
        {
            // The return from the interrupt puts the global enable back on.
            _frame = new Frame(_handlerChains[handler], depth);
            if (_device.Sleep.StatusRegister is { } saved)
            {
                LeaveWithStatus(after, saved);
            }
            else if (!IsMicrocontrollerProfile)
            {
                SetGlobalEnable(after, isOn: true, handler, handler.Range);
            }

            after.NeedsInterleaving = false;
            after.OpenLock = openLock;
        }

        _activeHandlers.RemoveAt(_activeHandlers.Count - 1);
        (_frame, _scope, _run, _effects, _sawOpenCondition) = (frame, scope, run, effects, isOpen);
        _volatileReads.Clear();
        _volatileReads.UnionWith(reads);
        return after;
    }

    /// <summary>What the hardware clears as it enters the handler: an enable that lasts for one interrupt.</summary>
    private MachineState ClearAtEntry(Interrupt interrupt, Function handler, MachineState state)
    {
        if (interrupt.ClearedAtEntry.IsEmpty)
        {
            return state;
        }

        var clears = Holds(state, interrupt.ClearedWhen);
        if (clears == Tristate.No)
        {
            return state;
        }

        var cleared = state.Copy();
        ClearBits(interrupt.ClearedAtEntry, handler, handler.Range, cleared);
        return clears == Tristate.Yes ? cleared : Join(state, cleared)!;
    }

    // What the hardware clears by itself counts as decided where that happens.
    private void ClearBits(ImmutableArray<FieldReference> bits, object node, SourceRange range, MachineState state)
    {
        foreach (var bit in bits)
        {
            var before = _registers.Read(state, bit.Register);
            if ((before.Known & ~before.Value & bit.Mask) == bit.Mask)
            {
                continue;
            }

            var after = new KnownBits(before.Known | bit.Mask, before.Value & ~bit.Mask);
            var address = _map.AddressOf(bit.Register);
            var decision = Decide(node, range, address, bit.Register.WidthBits / 8, before, after);
            _registers.SetBit(state, bit, isOne: false, _log.Single(decision));
        }
    }

    // A handler may stop the CPU by what it leaves for its return: then whatever was interrupted goes on after the next waking.
    private MachineState? SleepAtReturn(Function handler, FieldReference stop, MachineState state)
    {
        var stops = Holds(state, IsOne(stop));
        if (stops == Tristate.No)
        {
            return state;
        }

        MachineState? running = null;
        if (stops == Tristate.Maybe)
        {
            running = state.Copy();
            _registers.Assume(running, stop, isOne: false);
            state = state.Copy();
            _registers.Assume(state, stop, isOne: true);
        }

        _handlersSleep = true;
        NoteEffect(state);
        NoteSleep(handler.Range, state);
        return Join(running, WakeUp(handler.Range, state));
    }

    /// <summary>The instructions that switch interrupts on and off globally.</summary>
    private void SetInterrupts(MachineState state, bool isOn, object node, SourceRange range)
    {
        // On other cores the instruction after the one that switches interrupts on runs before any of them.
        state.IsShielded = isOn && !IsMicrocontrollerProfile && InterruptsOn(state) == Tristate.No;
        SetGlobalEnable(state, isOn, node, range);
        state.NeedsInterleaving |= isOn;
    }

    private void SetGlobalEnable(MachineState state, bool isOn, object node, SourceRange range)
    {
        if (_device.Sleep.GlobalInterruptEnable is not { } enable)
        {
            return;
        }

        var address = _map.AddressOf(enable.Register);
        var before = _registers.Read(state, enable.Register);
        var known = before.Known | enable.Mask;
        var after = new KnownBits(known, isOn ? before.Value | enable.Mask : before.Value & ~enable.Mask);
        var decision = Decide(node, range, address, enable.Register.WidthBits / 8, before, after);
        _registers.SetBit(state, enable, isOn, _log.Single(decision));
    }
}
