using System.Collections.Immutable;
using PowerLint.Analysis;

namespace PowerLint.Rules;

/// <summary>Makes findings of what rules observed.</summary>
internal static class Reporting
{
    /// <summary>Reports grouped observations, one finding a group.</summary>
    public static void Report(
        this RuleContext context,
        IEnumerable<Observation> observations,
        Func<ObservationGroup, string> message,
        Func<ObservationGroup, Mend?>? mend = null,
        Func<ObservationGroup, IEnumerable<RelatedLocation>>? related = null
    )
    {
        foreach (var group in ObservationGroup.Of(observations))
        {
            var first = group.First;
            context.Report(
                new Finding
                {
                    RuleId = context.Rule.Id,
                    Level = first.Level,
                    Certainty = first.Certainty,
                    Subjects = group.Subjects,
                    Message = message(group),
                    Range = first.Cause.Range,
                    Function = first.Cause.Function,
                    Related =
                    [
                        .. group
                            .Observations.SelectMany(observation => observation.Cause.RelatedCalls())
                            .DistinctBy(related => related.Range),
                        .. RelatedPoints(first.Cause, group.Points),
                        .. related?.Invoke(group) ?? [],
                    ],
                    Flow =
                    [
                        .. group
                            .Observations.SelectMany(observation => observation.Flow)
                            .Distinct()
                            .OrderBy(decision => decision.Ordinal),
                    ],
                    Point = first.Point.Point,
                    SleepMode = first.Point.ModeName,
                    IsFromReset = first.Cause.IsReset,
                    // What may not hold is not changed.
                    Mend = first.Certainty == Certainty.Possible ? null : mend?.Invoke(group),
                }
            );
        }
    }

    /// <summary>A finding about a resting point itself.</summary>
    public static Finding AtPoint(
        this RuleContext context,
        PointFacts point,
        Certainty certainty,
        ImmutableArray<string> subjects,
        string message,
        ImmutableArray<Decision> flow
    ) =>
        new()
        {
            RuleId = context.Rule.Id,
            Level = context.LevelOf(certainty),
            Certainty = certainty,
            Subjects = subjects,
            Message = message,
            Range = point.Point.Range,
            Function = point.Point.Function,
            Related = [.. Cause.Of(point.Point).RelatedCalls()],
            Flow = flow,
            Point = point.Point,
            SleepMode = point.ModeName,
        };

    /// <summary>The lower of a level and a note.</summary>
    public static Level AtMostNote(this Level level) => level < Level.Note ? level : Level.Note;

    private static IEnumerable<RelatedLocation> RelatedPoints(Cause cause, ImmutableArray<PointFacts> points) =>
        points
            .Where(point => point.Point.Range != cause.Range)
            .DistinctBy(point => point.Point.Range)
            .Select(point => new RelatedLocation(
                point.Point.Range,
                point.Point.Kind == RestingKind.Sleep
                    ? $"the CPU sleeps here{(point.ModeName is { } mode ? $" ({mode})" : "")}"
                    : "the CPU rests in this loop"
            ));
}
