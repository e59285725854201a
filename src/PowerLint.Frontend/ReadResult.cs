using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>What was read.</summary>
public sealed record ReadResult
{
    /// <summary>The units that could be lowered, in the order of the request.</summary>
    public IReadOnlyList<TranslationUnit> Units { get; init; } = [];

    /// <summary>The build target of each unit, in the same order; null where the build does not tell.</summary>
    public IReadOnlyList<string?> Targets { get; init; } = [];

    /// <summary>Why nothing can be analysed, or null.</summary>
    public ReadFailure? Failure { get; init; }

    /// <summary>What was done otherwise than asked, one a kind, in order of identifier and message.</summary>
    public IReadOnlyList<ReadNotice> Notices { get; init; } = [];

    /// <summary>Errors in the source: what they stand in is missing from the units.</summary>
    public IReadOnlyList<SourceError> Errors { get; init; } = [];

    /// <summary>What the time went into; null where nothing was read.</summary>
    public ReadTimes? Times { get; init; }

    /// <summary>
    /// A hash of all that was read, and of the flags: where two are equal, so are the results. Null where something was wrong with
    /// the input, or nothing is kept.
    /// </summary>
    public byte[]? Input { get; init; }

    /// <summary>How many of the units came from the cache.</summary>
    public int UnitsFromCache { get; init; }

    /// <summary>What could not be lowered, over all units.</summary>
    public IEnumerable<LoweringGap> Gaps => Units.SelectMany(unit => unit.Gaps);
}

/// <summary>Why nothing can be analysed.</summary>
public enum ReadFailureKind
{
    /// <summary>A source file does not exist.</summary>
    FileMissing,

    /// <summary>The compile database does not exist.</summary>
    DatabaseMissing,

    /// <summary>The compile database is not what it should be.</summary>
    DatabaseBroken,

    /// <summary>The compile database lists no C file.</summary>
    DatabaseEmpty,

    /// <summary>Neither flags nor device tell the target, or it is one that cannot be parsed for.</summary>
    TargetUnknown,

    /// <summary>No file could be parsed.</summary>
    NothingUsable,
}

/// <summary>A failure, told to the user.</summary>
/// <param name="Kind">What went wrong.</param>
/// <param name="Path">The file concerned.</param>
/// <param name="Line">The line in it, or null.</param>
/// <param name="Message">What is wrong and what to do.</param>
public sealed record ReadFailure(ReadFailureKind Kind, string Path, int? Line, string Message);

/// <summary>Something done otherwise than asked.</summary>
/// <param name="Id">A stable identifier of its kind.</param>
/// <param name="Message">For people.</param>
/// <param name="IsIncomplete">Whether part of the firmware is left out because of it.</param>
public sealed record ReadNotice(string Id, string Message, bool IsIncomplete = false);

/// <summary>An error that the parser found in the source.</summary>
/// <param name="Path">The file.</param>
/// <param name="Line">Line, from 1; 0 where there is none.</param>
/// <param name="Column">Column, from 1.</param>
/// <param name="Message">The parser's words.</param>
public sealed record SourceError(string Path, int Line, int Column, string Message);
