namespace PowerLint.Program;

/// <summary>A stretch of source: <see cref="Start"/> inclusive to <see cref="End"/> exclusive, in one file.</summary>
public readonly record struct SourceRange(SourcePosition Start, SourcePosition End)
{
    /// <summary>The range of code that no file holds.</summary>
    public static SourceRange None { get; } =
        new(new SourcePosition(SourceFile.None, 0, 0), new SourcePosition(SourceFile.None, 0, 0));

    /// <summary>The file that the range starts in.</summary>
    public SourceFile File => Start.File;

    /// <summary>The first line, from 1.</summary>
    public int Line => Start.Line;

    /// <inheritdoc/>
    public override string ToString() => Start.ToString();
}
