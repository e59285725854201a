using System.Collections.Immutable;
using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>What the rules found in an image.</summary>
/// <param name="Findings">The findings, by file, line, column, rule and subjects.</param>
/// <param name="Suppressed">Findings that a comment in the source allows, in the same order.</param>
/// <param name="Verdicts">Subjects that were looked at and are clean.</param>
public sealed record RuleRun(
    ImmutableArray<Finding> Findings,
    ImmutableArray<SuppressedFinding> Suppressed,
    ImmutableArray<Verdict> Verdicts
)
{
    /// <summary>The source files as the findings and their fixes saw them.</summary>
    public SourceTexts Sources { get; init; } = new();
}

/// <summary>A finding that a comment allows.</summary>
/// <param name="Finding">The finding.</param>
/// <param name="Reason">Why it is fine, as the comment says.</param>
/// <param name="Comment">Where the comment stands.</param>
public sealed record SuppressedFinding(Finding Finding, string Reason, SourceRange Comment);
