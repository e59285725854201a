using PowerLint.Program;

namespace PowerLint.Reports;

/// <summary>How much a notice matters.</summary>
public enum NoticeLevel
{
    /// <summary>Good to know.</summary>
    Note,

    /// <summary>Results may be less exact because of it.</summary>
    Warning,

    /// <summary>Part of the firmware could not be looked at.</summary>
    Error,
}

/// <summary>Something to say about the run itself, as opposed to the firmware: never a finding.</summary>
/// <param name="Level">How much it matters.</param>
/// <param name="Id">Stable identifier, kebab-case: <c>step-budget</c>.</param>
/// <param name="Message">What happened and what to do.</param>
/// <param name="Range">Where, or null.</param>
/// <param name="IsIncomplete">Whether findings may be missing because of it.</param>
public sealed record Notice(NoticeLevel Level, string Id, string Message, SourceRange? Range, bool IsIncomplete);
