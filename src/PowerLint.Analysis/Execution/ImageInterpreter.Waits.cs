using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    private readonly Dictionary<Loop, CountedLoop?> _countedLoops = [];

    /// <summary>
    /// Skips a loop that only counts, noting the time that it takes; null where the loop is another, or its count is not known.
    /// </summary>
    private MachineState? SkipCountedLoop(Loop loop, MachineState state)
    {
        if (!_countedLoops.TryGetValue(loop, out var counted))
        {
            counted = CountedLoop.Recognize(loop);
            _countedLoops.Add(loop, counted);
        }

        if (counted is null || _handlerRegions.Contains(_regions.Of((LocalVariable)counted.Counter, _frame.Depth)))
        {
            return null;
        }

        var region = _regions.Of((LocalVariable)counted.Counter, _frame.Depth);
        var width = (int)counted.Type.SizeBytes;
        var start = Typed(_memory.Read(state, region, 0, width), counted.Type);
        if (
            start is not IntegerValue { IsConstant: true } first
            || Evaluate(counted.Limit, state) is not IntegerValue { IsConstant: true } limit
            || counted.Run(first.Minimum, limit.Minimum) is not { } outcome
        )
        {
            return null;
        }

        _memory.Write(
            state,
            region,
            0,
            width,
            InMemory(IntegerValue.Constant(counted.Type.Bits, outcome.Final), width)
        );
        if (!counted.OutlivesOptimization && _image.Macro("__OPTIMIZE__") is not null)
        {
            // avr-gcc -Os (5.4.0) leaves nothing of such a loop but the counter's last value.
            return state;
        }

        var cycles = outcome.Passes * (double)(CyclesOfPass(counted) + counted.BodyCycles);
        NoteWait(WaitKind.CountedLoop, loop.Range, callee: null, cycles);
        SpendCycles(state, (long)Math.Min(cycles, int.MaxValue));
        return state;
    }

    // Counted by hand in compiler output; common practice, no source. A counter in a register takes one subtraction a word and
    // a taken branch; a volatile one is loaded and stored again on every pass, and compared.
    private int CyclesOfPass(CountedLoop loop)
    {
        var bytes = (int)loop.Type.SizeBytes;
        if (_image.Target.IntBits == 16)
        {
            return loop.IsVolatile ? 2 + (7 * bytes)
                : bytes <= 2 ? 2 + bytes
                : 3 + bytes;
        }

        return loop.IsVolatile ? 9 : 4;
    }

    // A loop that only looks at what a periodic handler counts waits for so many of its periods.
    private void NoteTickWait(Loop loop, MachineState entry)
    {
        if (_trial is null && !IsInHandler && TicksUntilLeft(loop, entry) is var (ticks, interrupt))
        {
            var period = PeriodLength.Of(interrupt, new RegisterView(_registers, entry));
            NoteWait(
                WaitKind.TickCount,
                loop.Range,
                callee: null,
                period is { ClockHertz: null } ? ticks * (double)period.Pulses : null,
                period?.Seconds(cpuHertz: null) * ticks
            );
        }
    }

    private void NoteWait(WaitKind kind, SourceRange range, string? callee, double? cycles, double? seconds = null)
    {
        _trial?.NoteWork();
        var (place, function, _) = _frame.Chain.UserPlace(range);
        Events.Waits.Add(new WaitEvent(kind, place, function, callee, cycles, Now, seconds));
    }

    /// <summary>
    /// A loop that does nothing but wait in its passes is one wait: its inner waits are taken together.
    /// </summary>
    private void GatherWaits(Loop loop, int firstEvent, int effectsBefore, bool wasOpen)
    {
        if (wasOpen || _effects != effectsBefore || Events.Waits.Count - firstEvent < 1)
        {
            return;
        }

        var inner = Events.Waits.GetRange(firstEvent, Events.Waits.Count - firstEvent);
        Events.Waits.RemoveRange(firstEvent, inner.Count);
        double? cycles = inner.Exists(wait => wait.Cycles is null) ? null : inner.Sum(wait => wait.Cycles);
        NoteWait(inner[0].Kind, loop.Range, inner[0].Callee, cycles);
    }

    // The outermost function of a header that the user's source called: the delay as the user knows it.
    private string HeaderCallee(string name)
    {
        for (
            var chain = _frame.Chain;
            chain.Function.Range.File.IsSystem && chain.Outer is not null;
            chain = chain.Outer
        )
        {
            name = chain.Function.Name;
        }

        return name;
    }
}
