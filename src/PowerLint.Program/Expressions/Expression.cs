namespace PowerLint.Program;

/// <summary>
/// A typed expression. Evaluation may have effects (assignments and calls are expressions, as in C); every implicit
/// conversion, array decay and scaling of an index is written out. Nodes compare by identity.
/// </summary>
/// <param name="type">The type of the result.</param>
/// <param name="range">Where the expression stands.</param>
public abstract class Expression(CType type, SourceRange range)
{
    /// <summary>The type of the result.</summary>
    public CType Type { get; } = type;

    /// <summary>Where the expression stands in the source.</summary>
    public SourceRange Range { get; } = range;
}
