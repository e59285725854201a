namespace PowerLint.Program;

/// <summary>A unit, and what the build says of where it is linked.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="Target">The build target that its object file belongs to, or null where the build does not tell.</param>
public sealed record UnitToLink(TranslationUnit Unit, string? Target);

/// <summary>The units of one image.</summary>
/// <param name="Name">What people call the image: its build target, else its main file or folder.</param>
/// <param name="Units">The units.</param>
public sealed record ImageUnits(string Name, IReadOnlyList<TranslationUnit> Units);
