namespace PowerLint.Program;

/// <summary>A place in the source, where macros are expanded (the macro's use, not its definition).</summary>
/// <param name="File">The file.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column in UTF-16 code units, from 1, as SARIF counts by default.</param>
public readonly record struct SourcePosition(SourceFile File, int Line, int Column)
{
    /// <inheritdoc/>
    public override string ToString() => $"{File.Path}:{Line}:{Column}";
}
