namespace PowerLint.Bench;

/// <summary>Where the working copy lies.</summary>
internal static class Sources
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = Find();

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "PowerLint.sln")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException("The benchmark is not run from a working copy.");
    }
}
