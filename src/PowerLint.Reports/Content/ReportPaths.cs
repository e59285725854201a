namespace PowerLint.Reports;

/// <summary>Shows paths relative to one folder where they lie below it, with forward slashes; else whole.</summary>
public sealed class ReportPaths
{
    /// <summary>Shows paths relative to a folder.</summary>
    /// <param name="root">The folder; relative ones are taken from the working directory.</param>
    public ReportPaths(string root) => Root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(root));

    /// <summary>The folder, absolute, without a separator at its end.</summary>
    public string Root { get; }

    /// <summary>The path to show.</summary>
    public string Show(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (!Path.IsPathRooted(path))
        {
            return path.Replace('\\', '/');
        }

        return TryRelative(path) ?? path.Replace('\\', '/');
    }

    /// <summary>The path below the folder, or null where it lies elsewhere.</summary>
    public string? TryRelative(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var relative = Path.GetRelativePath(Root, path).Replace('\\', '/');
        return
            relative.StartsWith("../", StringComparison.Ordinal)
            || string.Equals(relative, "..", StringComparison.Ordinal)
            || Path.IsPathRooted(relative)
            ? null
            : relative;
    }
}
