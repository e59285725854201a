using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>
/// Runs an image by induction on the structure of its code: executing a statement in a state gives the states that leave it.
/// While conditions are decided there is one state and nothing is joined. This part holds what all others share; expressions,
/// conditions, statements, loops, calls, handlers and sleep are in files of their own.
/// </summary>
internal sealed partial class ImageInterpreter
{
    private readonly Image _image;
    private readonly DeviceModel _device;
    private readonly AnalysisOptions _options;
    private readonly CancellationToken _cancellation;
    private readonly RegionTable _regions;
    private readonly MemoryModel _memory;
    private readonly DecisionLog _log = new();
    private readonly ChainCount _chains = new();
    private readonly RegisterMap _map;
    private readonly RegisterFile _registers;
    private readonly Dictionary<Function, LabelIndex> _labels = [];
    private readonly Dictionary<string, ulong> _symbols;

    private Frame _frame;
    private JumpScope _scope = new();
    private LoopRun? _run;
    private long _steps;

    // Counts what a loop's pass did to the world: writes outside locals, sleeps, calls of unknown code.
    private int _effects;

    public ImageInterpreter(Image image, DeviceModel device, AnalysisOptions options, CancellationToken cancellation)
    {
        _image = image;
        _device = device;
        _options = options;
        _stepLimit = options.StepBudget;
        _cancellation = cancellation;
        _regions = new RegionTable(image, FillInitialContents);
        _memory = new MemoryModel(_regions);
        _map = new RegisterMap(device);
        _symbols = device.Symbols.ToDictionary(symbol => symbol.Name, symbol => symbol.Address, StringComparer.Ordinal);
        _registers = new RegisterFile(_map, _log);
        _frame = new Frame(CallChain.Enter(image.Entry, handler: null), 0);
        BindHandlers();
    }

    public EventLog Events { get; private set; } = new();

    public RegisterFile Registers => _registers;

    /// <summary>The state in which <c>main</c> returned, or null where it does not.</summary>
    public MachineState? Finished { get; private set; }

    private bool IsInHandler => _frame.Chain.Handler is not null;

    private Moment Now => new(_run, IsInHandler);

    // Past half of its steps the run gives up exactness to get to an end.
    private bool IsHurried => _steps > _options.StepBudget / 2;

    /// <summary>Runs start-up code and <c>main</c> from reset.</summary>
    public void Run()
    {
        var state = new MachineState
        {
            Memory = PersistentMap<MemoryCell>.Empty,
            Registers = PersistentMap<RegisterByte>.Empty,
        };
        try
        {
            foreach (var function in _image.Startup)
            {
                state = RunEntry(function, state);
                if (state is null)
                {
                    return;
                }
            }

            Finished = RunEntry(_image.Entry, state);
        }
        catch (InsufficientExecutionStackException)
        {
            Events.Limit(
                "nesting",
                "The analysis stopped where calls, statements and expressions nest too deeply; what lies behind is not checked.",
                _frame.Function.Range,
                isIncomplete: true
            );
        }
        catch (StepBudgetExceededException)
        {
            Events.Limit(
                "step-budget",
                $"The analysis stopped after {_options.StepBudget} steps; what lies behind is not checked. "
                    + "Raise the step budget, or leave out sources that power does not depend on.",
                _frame.Function.Range,
                isIncomplete: true
            );
        }
    }

    private MachineState? RunEntry(Function function, MachineState state)
    {
        var frame = new Frame(CallChain.Enter(function, handler: null), 0);
        return RunBody(frame, [], state).State;
    }

    private void Step()
    {
        if (++_steps > _stepLimit)
        {
            throw new StepBudgetExceededException();
        }

        // Throws where the stack is nearly used up: what nests is bounded, but calls multiply it.
        RuntimeHelpers.EnsureSufficientExecutionStack();
        if ((_steps & 0xFFF) == 0)
        {
            _cancellation.ThrowIfCancellationRequested();
        }
    }

    private MachineState? Join(MachineState? a, MachineState? b)
    {
        Step();
        return JoinStates(a, b);
    }

    /// <summary>Joins two states, at no cost: after the run, too.</summary>
    public MachineState? JoinStates(MachineState? a, MachineState? b)
    {
        if (a is null || a.IsUnreachable)
        {
            return b is { IsUnreachable: false } ? b : null;
        }

        if (b is null || b.IsUnreachable || ReferenceEquals(a, b))
        {
            return a;
        }

        return new MachineState
        {
            Memory = _memory.Join(a, b),
            Registers = _registers.Join(a, b),
            UnknownCallees = UnionOf(a.UnknownCallees, b.UnknownCallees),
            OpenLock = OpenLock.Join(a.OpenLock, b.OpenLock),
            NeedsInterleaving = a.NeedsInterleaving || b.NeedsInterleaving,
            Tests = SeenTests.Join(a.Tests, b.Tests),
            IsShielded = a.IsShielded && b.IsShielded,
            Idle = IdlePass.Join(a.Idle, b.Idle),
        };
    }

    private MachineState Widen(MachineState before, MachineState after, bool isFar = false)
    {
        var joined = Join(before, after)!;
        return new MachineState
        {
            Memory = _memory.Widen(before, joined, isFar),
            Registers = joined.Registers,
            UnknownCallees = joined.UnknownCallees,
            OpenLock = joined.OpenLock,
            NeedsInterleaving = joined.NeedsInterleaving,
            Tests = joined.Tests,
            IsShielded = joined.IsShielded,
            Idle = joined.Idle,
        };
    }

    private bool IsIncluded(MachineState a, MachineState b) =>
        _registers.IsIncluded(a, b)
        && _memory.IsIncluded(a, b)
        && (!a.NeedsInterleaving || b.NeedsInterleaving)
        && (IsHurried || SeenTests.IsIncluded(a.Tests, b.Tests))
        && (a.UnknownCallees.IsEmpty || UnionOf(a.UnknownCallees, b.UnknownCallees).Length == b.UnknownCallees.Length);

    private static ImmutableArray<string> UnionOf(ImmutableArray<string> a, ImmutableArray<string> b) =>
        b.IsEmpty || a.Equals(b) ? a
        : a.IsEmpty ? b
        : [.. a.Concat(b).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    private static void AddUnknownCallee(MachineState state, string name) =>
        state.UnknownCallees = UnionOf(state.UnknownCallees, [name]);

    private LabelIndex LabelsOf(Function function)
    {
        if (!_labels.TryGetValue(function, out var index))
        {
            index = new LabelIndex(function);
            _labels.Add(function, index);
        }

        return index;
    }

    private Tristate Holds(MachineState state, Condition condition) => _registers.Evaluate(state, condition);

    private Tristate InterruptsOn(MachineState state)
    {
        if (_device.Sleep.GlobalInterruptEnable is not { } enable)
        {
            return Tristate.Yes;
        }

        var bits = new RegisterView(_registers, state).Read(enable);
        return (bits.Known & 1) == 0 ? Tristate.Maybe
            : (bits.Value & 1) != 0 ? Tristate.Yes
            : Tristate.No;
    }

    private Decision Decide(object node, SourceRange range, ulong address, int width, KnownBits before, KnownBits after)
    {
        var chain = _frame.Chain;
        return _log.Decide(
            node,
            chain,
            address,
            before,
            after,
            (ordinal, from, to) =>
            {
                var (place, function, placeChain) = chain.UserPlace(range);
                return new Decision
                {
                    Ordinal = ordinal,
                    Address = address,
                    WidthBits = 8 * width,
                    Range = place,
                    Function = function.DisplayName,
                    Calls = placeChain.Sites(),
                    Handler = chain.Handler,
                    Before = from,
                    After = to,
                };
            }
        );
    }

    private sealed class StepBudgetExceededException : Exception;
}
