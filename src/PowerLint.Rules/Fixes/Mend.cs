using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>Where a mend stands in the source.</summary>
internal enum MendPlace
{
    /// <summary>Right after the statement that is to blame; where only reset is, at the start of <c>main</c>.</summary>
    AfterCause,

    /// <summary>Right before the statement that is to blame.</summary>
    BeforeCause,

    /// <summary>At the start of <c>main</c>.</summary>
    AtStart,

    /// <summary>Before the CPU rests.</summary>
    BeforeRest,
}

/// <summary>What would mend a finding, in device concepts; <see cref="FixWriter"/> puts it into the source's words.</summary>
internal sealed record Mend
{
    /// <summary>What it does, for people.</summary>
    public required string Description { get; init; }

    /// <summary>Fields with the values that they must get.</summary>
    public ImmutableArray<FieldCondition> Writes { get; init; } = [];

    /// <summary>C code that must stand before the cause, where the device model gives it (an unlock).</summary>
    public string? Code { get; init; }

    /// <summary>Fields with the values that the code gives them, for a source that does not know its names; empty where that is not all.</summary>
    public ImmutableArray<FieldCondition> Meaning { get; init; } = [];

    /// <summary>Whether what the code opens closes again by itself, so that nothing may come between.</summary>
    public bool IsTimed { get; init; }

    /// <summary>The name of the key that must be part of the value that the cause writes.</summary>
    public string? Key { get; init; }

    /// <summary>Where it goes.</summary>
    public required MendPlace Place { get; init; }

    /// <summary>What is to blame.</summary>
    public required Cause Cause { get; init; }

    /// <summary>The resting points that it concerns.</summary>
    public ImmutableArray<RestingPoint> Points { get; init; } = [];

    /// <summary>Fields with the values that they get back after resting, or behind the cause.</summary>
    public ImmutableArray<FieldCondition> Restore { get; init; } = [];

    /// <summary>The writes to blame: a statement that did nothing else is taken out, rather than undone behind it.</summary>
    public ImmutableArray<Decision> Undoes { get; init; } = [];

    /// <summary>
    /// The field that the statement to blame gives a value by name, and the value that it should give: the name is replaced.
    /// </summary>
    public (FieldReference Field, ulong Old, ulong New)? Renames { get; init; }

    /// <summary>Whether the finding stands on ways that do not pass its cause, too.</summary>
    public bool IsForEveryWay { get; init; }

    /// <summary>Whether it can be applied unseen (<see cref="Fix.IsSafe"/>).</summary>
    public bool IsSafe { get; init; }

    /// <summary>Why it is safe, or what to look at first.</summary>
    public required string Because { get; init; }
}
