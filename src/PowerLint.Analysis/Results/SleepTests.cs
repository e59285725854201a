using System.Collections.Immutable;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>Tells from the tests that were seen which of them guard a sleep, and which skip one.</summary>
internal sealed class SleepTests(ImageInterpreter interpreter, PathOrder paths)
{
    private readonly EventLog _events = interpreter.Events;

    public ImmutableArray<GuardedSleep> Guards() =>
        [
            .. _events
                .TestsBeforeSleep.SelectMany(entry => entry.Value.Values.Select(test => (entry.Key.Sleep, Test: test)))
                .Where(guard => guard.Test is { Outcomes: not SeenTest.Both, CanFlip: true })
                .GroupBy(guard => (guard.Sleep, guard.Test!.Node))
                .Select(guards =>
                    (
                        guards.Key.Sleep,
                        Site: _events.Tests[guards.Key.Node],
                        IsExposed: Worst(guards.Select(g => g.Test!))
                    )
                )
                .Select(guard => new GuardedSleep(
                    guard.Sleep,
                    guard.Site.Range,
                    Variables(guard.Site),
                    Handlers(guard.Site),
                    guard.IsExposed
                ))
                .OrderBy(guard => guard.Sleep.File.Path, paths)
                .ThenBy(guard => guard.Sleep.Start.Line)
                .ThenBy(guard => guard.Sleep.Start.Column)
                .ThenBy(guard => guard.Test.File.Path, paths)
                .ThenBy(guard => guard.Test.Start.Line)
                .ThenBy(guard => guard.Test.Start.Column),
        ];

    public ImmutableArray<SkippedSleep> Skips(LoopRun run) =>
        [
            .. run
                .IdlePasses.Select(pass => (Node: SkippingTest(pass.Tests), pass.IsDoubtful))
                .Where(skip => skip.Node is not null)
                .GroupBy(skip => skip.Node!)
                .Select(skip => (Site: _events.Tests[skip.Key], IsCertain: skip.Any(pass => !pass.IsDoubtful)))
                .Select(skip => new SkippedSleep(
                    skip.Site.Range,
                    skip.Site.Function.DisplayName,
                    Variables(skip.Site),
                    Handlers(skip.Site),
                    skip.IsCertain
                ))
                .OrderBy(skip => skip.Test.File.Path, paths)
                .ThenBy(skip => skip.Test.Start.Line)
                .ThenBy(skip => skip.Test.Start.Column),
        ];

    private static Tristate Worst(IEnumerable<SeenTest> tests) =>
        tests.Any(test => test is { IsExposed: Tristate.Yes, IsDoubtful: false }) ? Tristate.Yes
        : tests.Any(test => test.IsExposed != Tristate.No) ? Tristate.Maybe
        : Tristate.No;

    // The test whose other outcome leads to a sleep. What hardware changes must decide nothing on that pass: it ends the
    // spinning without a handler.
    private object? SkippingTest(ImmutableArray<SeenTest> pass)
    {
        var decisive = pass.Where(test => test.Outcomes is SeenTest.False or SeenTest.True).ToArray();
        if (decisive.Any(test => _events.Tests[test.Node].ReadsHardware))
        {
            return null;
        }

        return decisive
            .LastOrDefault(test =>
                _events.TestsBeforeSleep.Values.Any(guards =>
                    guards.GetValueOrDefault((Expression)test.Node) is { } guard
                    && guard.Outcomes == (SeenTest.Both & ~test.Outcomes)
                ) && !AreTestedAgain(test, pass)
            )
            ?.Node;
    }

    // Two tests of the same variables may exclude each other without the analysis knowing: then there is no such pass.
    private bool AreTestedAgain(SeenTest test, ImmutableArray<SeenTest> others)
    {
        var elsewhere = others
            .Where(other => !ReferenceEquals(other, test))
            .SelectMany(other => _events.Tests[other.Node].Places)
            .ToHashSet();
        return _events.Tests[test.Node].Places.All(elsewhere.Contains);
    }

    private static ImmutableArray<string> Variables(TestSite site) =>
        [
            .. site
                .Places.Select(place => place.Region.Name)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];

    private ImmutableArray<string> Handlers(TestSite site) =>
        [
            .. site
                .Places.SelectMany(place =>
                    interpreter.HandlerWrites.TryGetValue(place, out var writes)
                        ? writes.Handlers
                        : Enumerable.Empty<Function>()
                )
                .Select(handler => handler.DisplayName)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];
}
