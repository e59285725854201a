using System.Collections.Immutable;
using System.Globalization;
using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>Makes the immutable result from what happened during a run.</summary>
internal sealed class ResultBuilder(
    ImageInterpreter interpreter,
    Image image,
    DeviceModel device,
    AnalysisOptions options
)
{
    private readonly EventLog _events = interpreter.Events;
    private readonly PathOrder _paths = new(image.Entry.Range.File.Path);

    public AnalysisResult Build()
    {
        var endless = EndlessRun();
        var points = SleepPoints();
        if (points.IsEmpty)
        {
            points = RestWithoutSleep(endless);
        }

        var (hertz, basis) = CpuClock();
        return new RunResult(_events)
        {
            Device = device,
            FirstStatement = FirstStatementOf(image.Entry),
            RestingPoints = points,
            EndlessLoop = endless is null ? null : DescribeLoop(endless),
            GuardedSleeps = new SleepTests(interpreter, _paths).Guards(),
            LostWrites = LostWrites(),
            BusyWaits = BusyWaits(hertz, basis),
            PollingLoops = PollingLoops(),
            Limits =
            [
                .. _events
                    .Limits.Values.OrderBy(l => l.Id, StringComparer.Ordinal)
                    .ThenBy(l => l.Range?.File.Path ?? "", StringComparer.Ordinal)
                    .ThenBy(l => l.Range?.Line ?? 0)
                    .ThenBy(l => l.Message, StringComparer.Ordinal),
            ],
            PeriodicWakes = PeriodicWakes(endless, points),
            CpuHertz = hertz,
            CpuClockBasis = basis,
            HandledInterrupts = [.. interpreter.HandledInterrupts],
        };
    }

    // The outermost loop that goes round and is never left is the one that main ends in.
    private LoopRun? EndlessRun() => _events.Runs.Where(run => run.IsEndless).MinBy(run => NestingOf(run));

    private static int NestingOf(LoopRun run)
    {
        var depth = 0;
        for (var outer = run.Outer; outer is not null; outer = outer.Outer)
        {
            depth++;
        }

        return depth;
    }

    private ImmutableArray<RestingPoint> SleepPoints() =>
        [
            .. _events.Sleeps.Select(visits =>
                SleepPoint(visits, visits.Contexts.Count > 1 ? [.. visits.Contexts.Select(c => SleepPoint(c, []))] : [])
            ),
        ];

    private RestingPoint SleepPoint(SleepVisits visits, ImmutableArray<RestingPoint> contexts)
    {
        MachineState? all = visits.First;
        MachineState? steady = null;
        var isInLoop = false;
        if (visits.Again is { } again)
        {
            all = interpreter.JoinStates(all, again);
            steady = again;
            isInLoop = true;
        }

        foreach (var (run, state) in visits.Later)
        {
            all = interpreter.JoinStates(all, state);
            if (run.IsEndless)
            {
                steady = interpreter.JoinStates(steady, state);
                isInLoop = true;
            }
        }

        for (var run = visits.AnyRun; run is not null; run = run.Outer)
        {
            isInLoop |= run.IsEndless;
        }

        var view = new RegisterView(interpreter.Registers, all!);
        return new RestingPoint
        {
            Kind = RestingKind.Sleep,
            Range = visits.Range,
            Function = visits.Function.DisplayName,
            Calls = visits.Chain.Sites(),
            State = view,
            SteadyState = steady is null ? view : new RegisterView(interpreter.Registers, steady),
            Contexts = contexts,
            SleepEnabled = view.Evaluate(device.Sleep.Enable),
            InterruptsOn = InterruptsOn(view),
            IsInEndlessLoop = isInLoop,
        };
    }

    private ImmutableArray<RestingPoint> RestWithoutSleep(LoopRun? endless)
    {
        var (head, later, range, function, chain) = endless is not null
            ? (endless.Head, endless.LaterHead, PlaceOf(endless), endless.Chain.Function, endless.Chain)
            : (interpreter.Finished, null, image.Entry.Range, image.Entry, null);
        if (head is null)
        {
            return [];
        }

        var view = new RegisterView(interpreter.Registers, head);
        return
        [
            new RestingPoint
            {
                Kind = RestingKind.EndlessLoop,
                Range = range,
                Function = function.DisplayName,
                Calls = chain?.Sites() ?? [],
                State = view,
                SteadyState = later is null ? view : new RegisterView(interpreter.Registers, later),
                SleepEnabled = view.Evaluate(device.Sleep.Enable),
                InterruptsOn = InterruptsOn(view),
                IsInEndlessLoop = endless is not null,
            },
        ];
    }

    private Tristate InterruptsOn(RegisterView view)
    {
        if (device.Sleep.GlobalInterruptEnable is not { } enable)
        {
            return Tristate.Yes;
        }

        return view.Evaluate(new FieldCondition(enable, [1]));
    }

    private static SourceRange PlaceOf(LoopRun run) => run.Chain.UserPlace(run.Place.Range).Range;

    private EndlessLoop DescribeLoop(LoopRun run) =>
        new(
            PlaceOf(run),
            run.Chain.UserPlace(run.Place.Range).Function.DisplayName,
            run.HasSleep,
            new SleepTests(interpreter, _paths).Skips(run)
        );

    private ImmutableArray<LostWrite> LostWrites() =>
        [
            .. _events
                .LostWrites.Values.Select(lost =>
                    _events.EffectiveWrites.Contains((lost.Register, lost.Decision.Range))
                        ? lost with
                        {
                            Certainty = Tristate.Maybe,
                        }
                        : lost
                )
                .OrderBy(lost => lost.Decision.Ordinal),
        ];

    private ImmutableArray<BusyWait> BusyWaits(double? hertz, string basis)
    {
        var waits = ImmutableArray.CreateBuilder<BusyWait>();
        foreach (var place in _events.Waits.GroupBy(wait => wait.Range))
        {
            // The most demanding context decides; in it, the longest execution seen.
            var demanding = place.Where(w => w.Moment.Context != RunContext.StartUp).ToArray();
            var chosen = demanding.Length > 0 ? demanding : [.. place];
            var longest = chosen.MaxBy(w => w.Seconds * (hertz ?? 1) ?? w.Cycles ?? double.PositiveInfinity)!;
            waits.Add(
                new BusyWait(
                    longest.Kind,
                    longest.Range,
                    longest.Function.DisplayName,
                    longest.Callee,
                    longest.Moment.Context,
                    longest.Cycles,
                    longest.Seconds ?? (longest.Cycles is { } cycles && hertz is { } clock ? cycles / clock : null),
                    longest.Seconds is null ? hertz : null,
                    basis
                )
            );
        }

        return
        [
            .. waits
                .OrderBy(w => w.Range.File.Path, _paths)
                .ThenBy(w => w.Range.Line)
                .ThenBy(w => w.Range.Start.Column),
        ];
    }

    private ImmutableArray<PollingLoop> PollingLoops() =>
        [
            .. _events
                .Polls.GroupBy(poll => (poll.Range, poll.Register))
                .Select(group =>
                {
                    var first = group.FirstOrDefault(p => p.Moment.Context != RunContext.StartUp) ?? group.First();
                    return new PollingLoop(
                        first.Range,
                        first.Chain.Function.DisplayName,
                        first.Moment.Context,
                        first.Register,
                        group.Aggregate(0UL, (mask, poll) => mask | poll.Mask),
                        first.Chain.Sites()
                    );
                })
                .OrderBy(p => p.Range.File.Path, _paths)
                .ThenBy(p => p.Range.Line)
                .ThenBy(p => p.Range.Start.Column),
        ];

    private ImmutableArray<PeriodicWake> PeriodicWakes(LoopRun? endless, ImmutableArray<RestingPoint> points)
    {
        if (endless is not { HasSleep: true } || interpreter.Events.Limits.Values.Any(limit => limit.IsIncomplete))
        {
            return [];
        }

        var wakes = ImmutableArray.CreateBuilder<PeriodicWake>();
        foreach (var interrupt in interpreter.HandledInterrupts.Where(interrupt => !interrupt.Periods.IsEmpty))
        {
            var ends = points.Any(point => point.SteadyState.Evaluate(interrupt.Enabled) != Tristate.No);
            if (ends && interpreter.WakesPerWork(endless, interrupt) is { } count)
            {
                wakes.Add(new PeriodicWake(interrupt, count));
            }
        }

        return wakes.ToImmutable();
    }

    private (double? Hertz, string Basis) CpuClock()
    {
        if (options.CpuHertz is { } configured)
        {
            return (configured, "configuration");
        }

        if (image.Macro("F_CPU") is { } text && ParseClock(text) is { } clock)
        {
            return (clock, "F_CPU");
        }

        return device.ResetClockHertz > 0 ? (device.ResetClockHertz, "reset clock") : (null, "unknown");
    }

    private static double? ParseClock(string text)
    {
        var digits = text.Trim().Trim('(', ')').TrimEnd('u', 'U', 'l', 'L').Trim();
        return double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value > 0
            ? value
            : null;
    }

    private static SourceRange FirstStatementOf(Function entry)
    {
        foreach (var statement in entry.Body.Statements)
        {
            return statement.Range;
        }

        return entry.Range;
    }
}
