namespace PowerLint.Testing;

/// <summary>Where the repository lies, found upwards from the tests' own folder.</summary>
public static class RepositoryRoot
{
    /// <summary>The folder that holds <c>PowerLint.sln</c>.</summary>
    public static string Path { get; } = Find();

    /// <summary>A path below the root, with the platform's separators.</summary>
    public static string Combine(params ReadOnlySpan<string> parts)
    {
        var path = Path;
        foreach (var part in parts)
        {
            path = System.IO.Path.Combine(path, part);
        }

        return path;
    }

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(System.IO.Path.Combine(folder.FullName, "PowerLint.sln")))
            {
                return folder.FullName;
            }
        }

        throw new DirectoryNotFoundException(
            $"No PowerLint.sln above {AppContext.BaseDirectory}: the tests must run inside the repository."
        );
    }
}
