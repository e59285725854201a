using System.Runtime.InteropServices;
using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>A scalar that the main program and handlers share.</summary>
internal readonly record struct SharedPlace(Region Region, long Offset);

/// <summary>What handlers write to such a place, and which do.</summary>
internal sealed class HandlerWrites
{
    public AbstractValue? Value { get; set; }

    public HashSet<Function> Handlers { get; } = [];

    /// <summary>They only count it.</summary>
    public bool IsCounter { get; set; } = true;
}

/// <summary>What a test looks at, over all its executions.</summary>
internal sealed class TestSite(SourceRange range, Function function)
{
    public SourceRange Range { get; } = range;

    public Function Function { get; } = function;

    public HashSet<SharedPlace> Places { get; } = [];

    /// <summary>It looks at bits that hardware changes, too.</summary>
    public bool ReadsHardware { get; set; }
}

/// <summary>What the main program reads while a condition or a copy is evaluated.</summary>
internal sealed class ReadWatch
{
    // Most conditions look at a few places; one that calls a function may look at thousands.
    private const int Few = 12;

    private List<(SharedPlace Place, int Width)>? _places;
    private HashSet<(SharedPlace Place, int Width)>? _known;

    public ReadOnlySpan<(SharedPlace Place, int Width)> Places => CollectionsMarshal.AsSpan(_places);

    public bool ReadsHardware { get; set; }

    public void Add(SharedPlace place, int width)
    {
        _places ??= [];
        if (_places.Count < Few)
        {
            foreach (var (known, knownWidth) in _places)
            {
                if (known.Offset == place.Offset && knownWidth == width && known.Region == place.Region)
                {
                    return;
                }
            }
        }
        else
        {
            _known ??= [.. _places];
            if (!_known.Add((place, width)))
            {
                return;
            }
        }

        _places.Add((place, width));
    }

    public void Add(ReadWatch inner)
    {
        foreach (var (place, width) in inner.Places)
        {
            Add(place, width);
        }

        ReadsHardware |= inner.ReadsHardware;
    }
}

internal sealed partial class ImageInterpreter
{
    private readonly Dictionary<SharedPlace, HandlerWrites> _handlerWrites = [];
    private ReadWatch? _reads;
    private int _sleeps;

    /// <summary>What handlers write, by place.</summary>
    public IReadOnlyDictionary<SharedPlace, HandlerWrites> HandlerWrites => _handlerWrites;

    // A tick that comes too early for the sleep is followed by the next one a period later: nothing is slept through.
    private bool IsTick(HandlerWrites writes) =>
        writes.IsCounter
        && _handlers.All(handler => !writes.Handlers.Contains(handler.Value) || handler.Key.IsPeriodic);

    private static bool Counts(object node) =>
        node is Assignment assignment
        && (
            assignment.Operator is BinaryOperator.Add or BinaryOperator.Subtract
            || WithoutConversions(assignment.Value)
                is BinaryOperation { Operator: BinaryOperator.Add or BinaryOperator.Subtract }
        );

    private static Expression WithoutConversions(Expression expression) =>
        expression is Conversion conversion ? WithoutConversions(conversion.Operand) : expression;

    private void NoteHandlerWrite(Region region, IntegerValue offset, AbstractValue value, object node)
    {
        if (!IsInHandler || region.Global is null || !offset.IsConstant || _trial is not null)
        {
            return;
        }

        var place = new SharedPlace(region, (long)offset.Minimum);
        if (!_handlerWrites.TryGetValue(place, out var writes))
        {
            writes = new HandlerWrites();
            _handlerWrites.Add(place, writes);
        }

        writes.Value = writes.Value is null ? value : AbstractValue.Join(writes.Value, value);
        writes.Handlers.Add(_activeHandlers[^1]);
        writes.IsCounter &= Counts(node);
    }

    private void NoteRead(Region region, IntegerValue offset, int width)
    {
        if (_reads is { } reads && !IsInHandler && offset.IsConstant)
        {
            var place = new SharedPlace(region, (long)offset.Minimum);
            reads.Add(place, width);
            Events.Unrepeatable += region.Global is not null && _handlerWrites.ContainsKey(place) ? 1 : 0;
        }
    }

    // What the main program has written since says nothing of what it saw before.
    private void ForgetTestsOf(Region region, MachineState state)
    {
        if (!IsInHandler && !state.Tests.IsEmpty)
        {
            state.Tests =
            [
                .. state.Tests.Select(test =>
                    test.Node is Expression && Events.Tests[test.Node].Places.Any(place => place.Region == region)
                        ? test with
                        {
                            Outcomes = SeenTest.Both,
                        }
                        : test
                ),
            ];
        }
    }

    private void NoteEffect(MachineState state, bool isWork = true)
    {
        _effects++;
        if (isWork)
        {
            _trial?.NoteWork();
        }

        if (!IsInHandler)
        {
            state.Idle = null;
        }
    }

    /// <summary>An instruction of the main program begins: interrupts that are on may come before it.</summary>
    private void BeginInstruction(MachineState state)
    {
        if (IsInHandler)
        {
            return;
        }

        Expose(state);
        state.IsShielded = false;
    }

    // An intrinsic is one instruction, which may be the sleep that a shield still covers.
    private bool IsIntrinsicCall(Expression expression) =>
        expression is Call { Callee: AddressOfFunction { Function: var symbol } } && _image.Resolve(symbol) is null;

    private AbstractValue? CallIntrinsicAsInstruction(
        string name,
        AbstractValue[] arguments,
        Call call,
        MachineState state
    )
    {
        var (isShielded, sleeps) = (state.IsShielded, _sleeps);
        if (!isShielded)
        {
            BeginInstruction(state);
        }

        var result = CallIntrinsic(name, arguments, call, state);
        if (isShielded && state.IsShielded && sleeps == _sleeps)
        {
            BeginInstruction(state);
        }

        return result;
    }

    private void Expose(MachineState state)
    {
        if (state.Tests.IsEmpty || state.Tests.All(test => test.IsExposed == Tristate.Yes))
        {
            return;
        }

        var isOn = InterruptsOn(state);
        if (isOn != Tristate.No)
        {
            state.Tests =
            [
                .. state.Tests.Select(test =>
                    test with
                    {
                        IsExposed = Either(test.IsExposed, CanCome(test, isOn, state)),
                    }
                ),
            ];
        }
    }

    private Tristate CanCome(SeenTest test, Tristate isOn, MachineState state)
    {
        var result = Tristate.No;
        foreach (var place in Events.Tests[test.Node].Places)
        {
            if (!_handlerWrites.TryGetValue(place, out var writes))
            {
                continue;
            }

            foreach (var (interrupt, handler) in _handlers)
            {
                if (writes.Handlers.Contains(handler))
                {
                    var enabled = Holds(state, interrupt.Enabled);
                    result = Either(result, enabled == Tristate.Yes ? isOn : enabled);
                }
            }
        }

        return result;
    }

    private static Tristate Either(Tristate a, Tristate b) =>
        a == Tristate.Yes || b == Tristate.Yes ? Tristate.Yes
        : a == Tristate.Maybe || b == Tristate.Maybe ? Tristate.Maybe
        : Tristate.No;

    private (MachineState? WhenTrue, MachineState? WhenFalse) BranchWatched(Expression condition, MachineState state)
    {
        var outer = _reads;
        var reads = IsInHandler ? null : new ReadWatch();
        _reads = reads ?? outer;
        var (whenTrue, whenFalse) =
            condition is BinaryOperation comparison && IntegerComparison.IsComparison(comparison.Operator)
                ? BranchOnComparison(comparison, state)
                : BranchOnValue(condition, state);
        _reads = outer;
        if (reads is null)
        {
            return (whenTrue, whenFalse);
        }

        outer?.Add(reads);
        if (!SeeTest(condition, reads, whenTrue, whenFalse) && whenTrue is not null && whenFalse is not null)
        {
            whenTrue.Idle = whenTrue.Idle?.Doubted();
            whenFalse.Idle = whenFalse.Idle?.Doubted();
        }

        return (whenTrue, whenFalse);
    }

    // False where the test looks at nothing that handlers or hardware change.
    private bool SeeTest(Expression condition, ReadWatch reads, MachineState? whenTrue, MachineState? whenFalse)
    {
        if ((whenTrue ?? whenFalse) is not { } state)
        {
            return true;
        }

        var shared = SharedReads(reads, state);
        if (shared.Count == 0 && !reads.ReadsHardware)
        {
            return false;
        }

        var site = SiteOf(condition, condition.Range);
        site.ReadsHardware |= reads.ReadsHardware;
        var isExposed = Tristate.No;
        var trueFlips = false;
        var falseFlips = false;
        foreach (var (place, read, width, copied) in shared)
        {
            site.Places.Add(place);
            isExposed = Either(isExposed, copied);
            if (_handlerWrites[place] is { Value: { } written } writes && !IsTick(writes))
            {
                trueFlips |= CanTurn(written, read, width, whenTrue, whenFalse);
                falseFlips |= CanTurn(written, read, width, whenFalse, whenTrue);
            }
        }

        See(whenTrue, SeenTest.True, trueFlips);
        See(whenFalse, SeenTest.False, falseFlips);
        return true;

        void See(MachineState? outcome, int bit, bool canFlip)
        {
            if (outcome is null)
            {
                return;
            }

            var test = new SeenTest(condition, bit, isExposed, canFlip)
            {
                IsOfCopy = shared.TrueForAll(read => read.Place != read.Read),
            };
            outcome.Idle = outcome.Idle?.With(test);
            if (shared.Count > 0)
            {
                // Looking again makes up for an earlier look at the same.
                outcome.Tests = outcome
                    .Tests.RemoveAll(earlier =>
                        earlier.Node is Expression && Events.Tests[earlier.Node].Places.IsSubsetOf(site.Places)
                    )
                    .With(test);
                Expose(outcome);
            }
        }
    }

    // Whether a handler's value could have led to the other outcome. A test that comes out one way alone decides nothing.
    private bool CanTurn(AbstractValue written, SharedPlace place, int width, MachineState? taken, MachineState? other)
    {
        if (taken is null || other is null)
        {
            return false;
        }

        var value = _memory.Read(other, place.Region, place.Offset, width);
        if (written is not IntegerValue by || value is not IntegerValue at || by.Bits != at.Bits)
        {
            return true;
        }

        return IntegerValue.Meet(by, at) is not null;
    }

    // What was read of places that handlers write, directly or from a local that holds a copy.
    private List<(SharedPlace Place, SharedPlace Read, int Width, Tristate Copied)> SharedReads(
        ReadWatch reads,
        MachineState state
    )
    {
        var shared = new List<(SharedPlace, SharedPlace, int, Tristate)>();
        foreach (var (place, width) in reads.Places)
        {
            // An element of a plain array is data, not a flag.
            if (
                _handlerWrites.ContainsKey(place)
                && (place.Region.SizeBytes == width || place.Region.Global?.IsVolatile == true)
            )
            {
                shared.Add((place, place, width, Tristate.No));
            }
            else if (place.Offset == 0 && state.Tests.Find(place.Region) is { } copy)
            {
                shared.AddRange(Events.Tests[place.Region].Places.Select(of => (of, place, width, copy.IsExposed)));
            }
        }

        return shared;
    }

    private TestSite SiteOf(object node, SourceRange range)
    {
        if (!Events.Tests.TryGetValue(node, out var site))
        {
            var (place, function, _) = _frame.Chain.UserPlace(range);
            site = new TestSite(place, function);
            Events.Tests.Add(node, site);
        }

        return site;
    }

    /// <summary>Evaluates what a local scalar is set to, and notes where it takes a copy of what handlers write.</summary>
    private ReadWatch? BeginSet()
    {
        var outer = _reads;
        _reads = IsInHandler ? outer : new ReadWatch();
        return outer;
    }

    /// <summary>Ends what <see cref="BeginSet"/> began.</summary>
    private void EndSet(LocalVariable variable, SourceRange range, MachineState state, ReadWatch? outer)
    {
        var reads = IsInHandler ? null : _reads;
        _reads = outer;
        if (reads is null || state.IsUnreachable)
        {
            return;
        }

        outer?.Add(reads);
        if (reads.Places.IsEmpty && state.Tests.IsEmpty)
        {
            return;
        }

        var region = _regions.Of(variable, _frame.Depth);
        var shared = SharedReads(reads, state);
        state.Tests = state.Tests.Without(region);
        if (shared.Count == 0)
        {
            return;
        }

        var site = SiteOf(region, range);
        site.Places.UnionWith(shared.Select(read => read.Place));
        state.Tests = state.Tests.With(
            new SeenTest(
                region,
                0,
                shared.Aggregate(Tristate.No, (all, read) => Either(all, read.Copied)),
                CanFlip: false
            )
        );
        Expose(state);
    }

    /// <summary>The tests that stand before a sleep instruction; one that a later visit comes without was only on the way there once.</summary>
    private void NoteTestsBeforeSleep(SourceRange range, MachineState state, bool isForEvent)
    {
        if (IsInHandler)
        {
            return;
        }

        if (isForEvent)
        {
            // What a handler does after the test leaves an event behind: none is slept through.
            state.Tests = [.. state.Tests.Select(test => test with { IsExposed = Tristate.No })];
        }
        else if (!state.IsShielded)
        {
            Expose(state);
        }

        var (place, _, chain) = _frame.Chain.UserPlace(range);
        if (!Events.TestsBeforeSleep.TryGetValue((place, chain), out var known))
        {
            known = new Dictionary<Expression, SeenTest?>(ReferenceEqualityComparer.Instance);
            Events.TestsBeforeSleep.Add((place, chain), known);
        }

        var guards = state.Tests.Where(test => test.Node is Expression).ToArray();
        foreach (
            var test in known.Keys.Where(test => !guards.Any(guard => ReferenceEquals(guard.Node, test))).ToArray()
        )
        {
            known[test] = null;
        }

        foreach (var test in guards.Where(test => !test.IsOfCopy || ReferenceEquals(test, guards[^1])))
        {
            var node = (Expression)test.Node;
            known[node] =
                !known.TryGetValue(node, out var before) ? test
                : before is null ? null
                : SeenTests.Join([before], [test])[0];
        }

        if (isForEvent)
        {
            state.Tests = [];
        }
    }
}
