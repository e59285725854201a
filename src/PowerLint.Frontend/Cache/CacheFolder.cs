namespace PowerLint.Frontend;

/// <summary>Where the user's caches lie.</summary>
public static class CacheFolder
{
    /// <summary>
    /// The product's own cache folder: below <c>XDG_CACHE_HOME</c> or <c>~/.cache</c>, on Windows below <c>LOCALAPPDATA</c>;
    /// null where the user has no home.
    /// </summary>
    public static string? Path { get; } = Find();

    private static string? Find()
    {
        var root =
            OperatingSystem.IsWindows() ? Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData)
            : Environment.GetEnvironmentVariable("XDG_CACHE_HOME") is { Length: > 0 } cache ? cache
            : Environment.GetFolderPath(Environment.SpecialFolder.UserProfile) is { Length: > 0 } home
                ? System.IO.Path.Combine(home, ".cache")
            : "";
        return System.IO.Path.IsPathRooted(root) ? System.IO.Path.Combine(root, "powerlint") : null;
    }
}
