namespace PowerLint.Program;

/// <summary>One source file with what it includes, lowered. Holds only what the image can reach from it.</summary>
/// <param name="Source">The main file.</param>
/// <param name="Target">The target that it was compiled for.</param>
/// <param name="Functions">Functions with bodies, in source order.</param>
/// <param name="Globals">Globals that it declares or defines, string literals and static locals included.</param>
/// <param name="Symbols">Every function that it names.</param>
/// <param name="Macros">Values of object-like macros that later stages ask for, as written: <c>F_CPU</c>, device names.</param>
/// <param name="Comments">Comments that mention the product.</param>
/// <param name="Gaps">What could not be lowered.</param>
public sealed record TranslationUnit(
    SourceFile Source,
    TargetLayout Target,
    IReadOnlyList<Function> Functions,
    IReadOnlyList<GlobalVariable> Globals,
    IReadOnlyList<FunctionSymbol> Symbols,
    IReadOnlyDictionary<string, string> Macros,
    IReadOnlyList<Comment> Comments,
    IReadOnlyList<LoweringGap> Gaps
)
{
    /// <summary>The paths of all files that it is made of, the main one first, system headers included.</summary>
    public IReadOnlyList<string> Included { get; init; } = [];
}

/// <summary>Something in the source that the lowering could not express.</summary>
/// <param name="Range">Where it stands.</param>
/// <param name="Construct">What it is, for people: <c>call of a nested function</c>.</param>
public sealed record LoweringGap(SourceRange Range, string Construct);
