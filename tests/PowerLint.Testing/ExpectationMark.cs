using System.Collections.Immutable;
using PowerLint.Rules;

namespace PowerLint.Testing;

/// <summary>What a mark asks for.</summary>
public enum MarkKind
{
    /// <summary><c>// finding:</c> the rule fires on the line.</summary>
    Finding,

    /// <summary><c>// finding-wanted:</c> it should, but does not yet; the test fails once it does, so that the mark is turned.</summary>
    FindingWanted,

    /// <summary><c>// finding-unwanted:</c> it fires but should not; the test fails once it is silent.</summary>
    FindingUnwanted,

    /// <summary><c>// related:</c> a finding of the rule names the line.</summary>
    Related,

    /// <summary><c>// clean:</c> the rule looked at the subjects and found nothing, anywhere in the image.</summary>
    Clean,

    /// <summary><c>// state:</c> a register at the resting point on the line.</summary>
    State,
}

/// <summary>An expectation in a comment of the source.</summary>
/// <param name="Kind">What it asks for.</param>
/// <param name="File">The file.</param>
/// <param name="Line">The line that it speaks of.</param>
/// <param name="Text">As written, for messages.</param>
public sealed record ExpectationMark(MarkKind Kind, string File, int Line, string Text)
{
    /// <summary>The rule, or the register of a state.</summary>
    public required string Name { get; init; }

    /// <summary>The subjects.</summary>
    public ImmutableArray<string> Subjects { get; init; } = [];

    /// <summary>The certainty, or null for any.</summary>
    public Certainty? Certainty { get; init; }

    /// <summary>The level, or null for any.</summary>
    public Level? Level { get; init; }

    /// <summary>Words that the message holds.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>The bits of a state: <c>0</c>, <c>1</c>, <c>?</c> unknown, <c>-</c> whatever.</summary>
    public string Bits { get; init; } = "";
}
