using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>That something is wrong with one subject at one resting point.</summary>
internal sealed record Observation
{
    /// <summary>The port or peripheral: subjects of one group and one cause make one finding.</summary>
    public required string Group { get; init; }

    /// <summary>What it is about.</summary>
    public required string Subject { get; init; }

    /// <summary>What belongs to the subject and is named with it (the pin of a clock output).</summary>
    public ImmutableArray<string> MoreSubjects { get; init; } = [];

    /// <summary>How sure it is.</summary>
    public required Certainty Certainty { get; init; }

    /// <summary>How much it matters.</summary>
    public required Level Level { get; init; }

    /// <summary>What is to blame.</summary>
    public required Cause Cause { get; init; }

    /// <summary>Where it matters.</summary>
    public required PointFacts Point { get; init; }

    /// <summary>The writes that decided it.</summary>
    public ImmutableArray<Decision> Flow { get; init; } = [];

    /// <summary>The condition that holds, where the message names its bits.</summary>
    public Condition? Condition { get; init; }

    /// <summary>The pin, where the subject is one.</summary>
    public Pin? Pin { get; init; }
}

/// <summary>Observations that make one finding: one group, one cause, one certainty, one level.</summary>
/// <param name="Observations">They, one a subject, sorted.</param>
/// <param name="Points">Every resting point where one of them was made, in order of first visit.</param>
internal sealed record ObservationGroup(ImmutableArray<Observation> Observations, ImmutableArray<PointFacts> Points)
{
    /// <summary>The first one, which speaks for what all have in common.</summary>
    public Observation First => Observations[0];

    /// <summary>The subjects, sorted.</summary>
    public ImmutableArray<string> Subjects =>
        [
            .. Observations
                .SelectMany(observation => observation.MoreSubjects.Prepend(observation.Subject))
                .Distinct(StringComparer.Ordinal)
                .Order(SubjectOrder.Instance),
        ];

    /// <summary>Groups observations, each subject at its worst.</summary>
    public static IEnumerable<ObservationGroup> Of(IEnumerable<Observation> observations)
    {
        var all = observations.ToArray();
        return all.GroupBy(o => (o.Group, o.Subject, o.Cause))
            .Select(same => same.OrderByDescending(o => o.Level).ThenBy(o => o.Certainty).First())
            .GroupBy(o => (o.Group, o.Cause, o.Certainty, o.Level))
            .Select(group =>
            {
                var members = group.OrderBy(o => o.Subject, SubjectOrder.Instance).ToImmutableArray();
                var subjects = members.Select(o => o.Subject).ToHashSet(StringComparer.Ordinal);
                return new ObservationGroup(
                    members,
                    [
                        .. all.Where(o =>
                                subjects.Contains(o.Subject)
                                && o.Cause.Equals(group.Key.Cause)
                                && o.Certainty == group.Key.Certainty
                                && o.Level == group.Key.Level
                            )
                            .Select(o => o.Point)
                            .Distinct(),
                    ]
                );
            });
    }
}
