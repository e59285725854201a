namespace PowerLint.Frontend;

/// <summary>The folder tree that is analysed, and so not trusted.</summary>
internal static class FirmwareTree
{
    private static readonly string[] RootMarks = [".git", "powerlint.yaml", CompileDatabase.FileName];

    /// <summary>The highest folder above a source file that is marked as a project's root; else the file's own folder.</summary>
    public static string RootOf(string file)
    {
        var own = Path.GetDirectoryName(Path.GetFullPath(file))!;
        var root = own;
        for (var folder = own; folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (Array.Exists(RootMarks, mark => Path.Exists(Path.Combine(folder, mark))))
            {
                root = folder;
            }
        }

        return root;
    }
}
