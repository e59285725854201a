namespace PowerLint.Program;

/// <summary>A file that the firmware is made of.</summary>
/// <param name="Path">The path as given by the build, made absolute.</param>
/// <param name="IsSystem">Whether the file came from a system header folder: findings point at the user's own source instead.</param>
public sealed record SourceFile(string Path, bool IsSystem)
{
    /// <summary>The place of code that no file holds.</summary>
    public static SourceFile None { get; } = new("<none>", IsSystem: true);
}
