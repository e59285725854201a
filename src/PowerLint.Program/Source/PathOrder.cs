namespace PowerLint.Program;

/// <summary>
/// Orders source paths as seen from the folder of the file that holds <c>main</c>, so that the order does not depend on
/// where a working copy lies.
/// </summary>
/// <param name="main">The path of the file that holds <c>main</c>.</param>
public sealed class PathOrder(string main) : IComparer<string>
{
    private readonly string _home = Path.GetDirectoryName(main) is { Length: > 0 } folder ? folder : ".";

    /// <inheritdoc/>
    public int Compare(string? x, string? y)
    {
        var relative = string.CompareOrdinal(Relative(x), Relative(y));
        return relative != 0 ? relative : string.CompareOrdinal(x, y);
    }

    private string? Relative(string? path) => path is { Length: > 0 } ? Path.GetRelativePath(_home, path) : path;
}
