namespace PowerLint.Frontend;

/// <summary>Sorts the parser's errors: mistakes in the source, and what a cross compiler accepts but this parser does not.</summary>
internal static class ParserMessages
{
    // The tree is whole in spite of these.
    private static readonly string[] Harmless =
    [
        "in naked function",
        "naked functions",
        "register name",
        "global register variables",
        "register type for",
        "'interrupt' attribute",
        "'__interrupt__' attribute",
        "'signal' attribute",
        "attribute argument is invalid",
        "interrupt service routine",
    ];

    // These cost the statement that they stand in.
    private static readonly string[] CostsStatement = ["in asm", "constraint", "invalid % escape", "inline assembly"];

    public static IReadOnlyList<SourceError> Errors(ClangUnit unit, UnitLowering lowering)
    {
        var errors = new List<SourceError>();
        foreach (var (severity, text, location) in unit.Diagnostics())
        {
            if (severity < CXDiagnosticSeverity.Error || Contains(text, Harmless))
            {
                continue;
            }

            var position = lowering.Sources.Position(location);
            if (Contains(text, CostsStatement))
            {
                lowering.ReportGap(
                    new Program.SourceRange(position, position),
                    $"assembly that the parser does not take ({text})"
                );
                continue;
            }

            errors.Add(new SourceError(position.File.Path, position.Line, position.Column, text));
        }

        return errors;
    }

    private static bool Contains(string text, string[] parts) =>
        Array.Exists(parts, part => text.Contains(part, StringComparison.Ordinal));
}
