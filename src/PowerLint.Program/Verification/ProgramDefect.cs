namespace PowerLint.Program;

/// <summary>A way in which a program form is not what it must be: a mistake of the lowering, not of the firmware.</summary>
/// <param name="Function">The function, or the global, that it stands in.</param>
/// <param name="Range">Where it stands in the source.</param>
/// <param name="Message">What is wrong.</param>
public sealed record ProgramDefect(string Function, SourceRange Range, string Message)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Range}: {Function}: {Message}";
}
