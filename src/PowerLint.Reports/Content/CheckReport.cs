using System.Collections.Immutable;
using PowerLint.Devices;
using PowerLint.Rules;

namespace PowerLint.Reports;

/// <summary>What a check has to say, ready to be written in any format.</summary>
public sealed record CheckReport
{
    /// <summary>The image's name, where the run checked several or one of several; else null.</summary>
    public string? Image { get; init; }

    /// <summary>The device, or null where the run did not get so far.</summary>
    public required DeviceModel? Device { get; init; }

    /// <summary>Findings, in the order to show them.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Findings that a comment in the source allows, with its reason.</summary>
    public ImmutableArray<AllowedFinding> Allowed { get; init; } = [];

    /// <summary>How the findings stand against an earlier report, or null where none was given.</summary>
    public BaselineComparison? Baseline { get; init; }

    /// <summary>What to say about the run.</summary>
    public required ImmutableArray<Notice> Notices { get; init; }

    /// <summary>The folder that paths are shown relative to.</summary>
    public required ReportPaths Paths { get; init; }

    /// <summary>The product's version.</summary>
    public required string ToolVersion { get; init; }

    /// <summary>The findings that count: those that an earlier report lacks, where one was given.</summary>
    public IEnumerable<Finding> Counting => Baseline is { } baseline ? Findings.Where(baseline.IsNew) : Findings;

    /// <summary>Whether part of the firmware could not be analysed.</summary>
    public bool IsIncomplete => Notices.Any(notice => notice.IsIncomplete);
}

/// <summary>A finding that a comment in the source allows.</summary>
/// <param name="Finding">The finding.</param>
/// <param name="Reason">The comment's reason.</param>
public sealed record AllowedFinding(Finding Finding, string Reason);
