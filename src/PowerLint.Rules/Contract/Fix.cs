using System.Collections.Immutable;
using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>A change of the source that mends a finding.</summary>
/// <param name="Description">What it does: <c>Give PD0 and PD1 their pull-ups</c>.</param>
/// <param name="IsSafe">
/// Whether it can be applied unseen: it works on no wire that the board could drive, changes no time and no clock, and leaves
/// what the program does as it is.
/// </param>
/// <param name="Because">Why it is safe, or what to look at first.</param>
/// <param name="Edits">The edits, by place; they belong together and do not overlap.</param>
public sealed record Fix(string Description, bool IsSafe, string Because, ImmutableArray<SourceEdit> Edits);

/// <summary>A stretch of source and what is to stand there instead; an empty stretch is an insertion.</summary>
/// <param name="Range">The stretch.</param>
/// <param name="Text">The new text, with the file's own line ends.</param>
public sealed record SourceEdit(SourceRange Range, string Text);
