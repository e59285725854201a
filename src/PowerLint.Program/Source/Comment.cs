namespace PowerLint.Program;

/// <summary>A comment of the user's own files that mentions the product, kept for suppressions.</summary>
/// <param name="Range">Where it stands.</param>
/// <param name="Text">Its text without the comment signs, trimmed.</param>
public sealed record Comment(SourceRange Range, string Text);
