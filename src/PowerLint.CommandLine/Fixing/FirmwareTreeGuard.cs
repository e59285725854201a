namespace PowerLint.CommandLine;

/// <summary>Tells files of the firmware's own tree from those that lie elsewhere, a tool chain's headers for one.</summary>
/// <param name="tree">The folder of the firmware.</param>
internal sealed class FirmwareTreeGuard(string tree)
{
    private readonly string _tree = RealPath(tree);

    /// <summary>Whether a file lies in the tree, links followed, and is no link itself.</summary>
    internal bool Holds(string path)
    {
        if (new FileInfo(path).LinkTarget is not null)
        {
            return false;
        }

        var relative = Path.GetRelativePath(_tree, RealPath(path));
        return !Path.IsPathRooted(relative)
            && !relative.Split(Path.DirectorySeparatorChar).Contains("..", StringComparer.Ordinal);
    }

    // Folder by folder, as any of them may be a link.
    private static string RealPath(string path)
    {
        var full = Path.GetFullPath(path);
        var parent = Path.GetDirectoryName(full);
        if (parent is null)
        {
            return full;
        }

        var here = Path.Combine(RealPath(parent), Path.GetFileName(full));
        return
            Directory.Exists(here) && new DirectoryInfo(here).ResolveLinkTarget(returnFinalTarget: true) is { } target
            ? target.FullName
            : here;
    }
}
