using System.Collections.Immutable;
using PowerLint.Rules;

namespace PowerLint.Reports;

/// <summary>How a finding stands against an earlier report.</summary>
public enum BaselineStanding
{
    /// <summary>The earlier report does not have it.</summary>
    New,

    /// <summary>The earlier report has it, too.</summary>
    Unchanged,
}

/// <summary>What became of the findings since an earlier report.</summary>
/// <param name="Shown">The earlier report's file, as the user named it.</param>
/// <param name="Standings">How each finding stands, by its fingerprint.</param>
/// <param name="AbsentCount">How many findings of the earlier report are gone.</param>
public sealed record BaselineComparison(
    string Shown,
    ImmutableDictionary<string, BaselineStanding> Standings,
    int AbsentCount
)
{
    /// <summary>
    /// The results that are gone. They are the SARIF library's, and of no type here so that a run without a baseline does not
    /// load it.
    /// </summary>
    internal ImmutableArray<object> Absent { get; init; } = [];

    /// <summary>Whether the earlier report lacks a finding.</summary>
    public bool IsNew(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return Standings.GetValueOrDefault(finding.Fingerprint, BaselineStanding.New) == BaselineStanding.New;
    }
}

/// <summary>An earlier report cannot be used.</summary>
/// <param name="message">What is wrong, and what to do.</param>
public sealed class BaselineException(string message) : Exception(message);
