using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>How sure a finding is.</summary>
public enum Certainty
{
    /// <summary>It holds on every path and every board.</summary>
    Proven,

    /// <summary>It holds unless the board drives or pulls the pin; the board file settles it.</summary>
    BoardDependent,

    /// <summary>A data-dependent path, or a function without a body, could change it.</summary>
    Possible,
}

/// <summary>How much a finding matters, in SARIF's terms.</summary>
public enum Level
{
    /// <summary>Board-dependent or possible.</summary>
    Note,

    /// <summary>A proven or likely waste.</summary>
    Warning,

    /// <summary>Proven, and it defeats sleep or blocks waking.</summary>
    Error,
}

/// <summary>Another place that a finding speaks of.</summary>
/// <param name="Range">The place.</param>
/// <param name="Message">What is there: <c>the sleep point</c>, <c>called from here</c>.</param>
public sealed record RelatedLocation(SourceRange Range, string Message);

/// <summary>What a finding costs.</summary>
/// <param name="Microamps">Estimated current wasted, in microamperes; null where unknown.</param>
/// <param name="Basis">Which figure and formula, or <c>unknown</c>.</param>
public sealed record CostEstimate(double? Microamps, string Basis)
{
    /// <summary>Nothing is known of the cost.</summary>
    public static CostEstimate Unknown { get; } = new(null, "unknown");
}

/// <summary>Something that wastes current.</summary>
public sealed record Finding
{
    /// <summary>The rule's identifier.</summary>
    public required string RuleId { get; init; }

    /// <summary>How much it matters.</summary>
    public required Level Level { get; init; }

    /// <summary>How sure it is.</summary>
    public required Certainty Certainty { get; init; }

    /// <summary>What it is about, in the catalogue's spelling, sorted.</summary>
    public required ImmutableArray<string> Subjects { get; init; }

    /// <summary>What is wrong, with pins, registers and values, and how to mend it.</summary>
    public required string Message { get; init; }

    /// <summary>Where it points.</summary>
    public required SourceRange Range { get; init; }

    /// <summary>The function that holds <see cref="Range"/>, for fingerprints; null outside functions.</summary>
    public string? Function { get; init; }

    /// <summary>Other places.</summary>
    public ImmutableArray<RelatedLocation> Related { get; init; } = [];

    /// <summary>The writes from reset that decided it, by ordinal.</summary>
    public ImmutableArray<Decision> Flow { get; init; } = [];

    /// <summary>The resting point where it matters, or null.</summary>
    public RestingPoint? Point { get; init; }

    /// <summary>The sleep mode in use there, or null.</summary>
    public string? SleepMode { get; init; }

    /// <summary>Tells the finding from others and survives unrelated edits (<see cref="Rules.Fingerprint"/>); set by <see cref="RuleRunner"/>.</summary>
    public string Fingerprint { get; init; } = "";

    /// <summary>What it costs.</summary>
    public CostEstimate Cost { get; init; } = CostEstimate.Unknown;

    /// <summary>A change of the source that mends it; null where none is sure to be right. Set by <see cref="RuleRunner"/>.</summary>
    public Fix? Fix { get; init; }

    /// <summary>What would mend it, in device concepts; <see cref="Fix"/> is written from it.</summary>
    internal Mend? Mend { get; init; }

    /// <summary>Whether reset is to blame, so that <see cref="Range"/> only stands for the start of the program.</summary>
    internal bool IsFromReset { get; init; }

    /// <summary>A comment that has no use any more.</summary>
    internal SourceRange? UselessComment { get; init; }
}
