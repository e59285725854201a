using System.IO.Enumeration;

namespace PowerLint.Frontend;

/// <summary>
/// Finds the cross compilers that may be asked about themselves: well-known ones on the search path, and those that the user allows by
/// a glob on the command line. Never one that lies in the firmware's tree, whatever names it.
/// </summary>
internal static class DriverLocation
{
    /// <summary>The compilers that may be asked, likeliest first, as full paths.</summary>
    /// <param name="target">The target.</param>
    /// <param name="compiler">The compiler as the build names it, or null.</param>
    /// <param name="allowed">The user's globs: over names, or over full paths where they hold a slash.</param>
    /// <param name="firmwareFolder">The firmware's tree.</param>
    public static IEnumerable<string> Candidates(
        TargetSelection target,
        string? compiler,
        IReadOnlyList<string> allowed,
        string firmwareFolder
    )
    {
        var searchPath = Environment.GetEnvironmentVariable("PATH") ?? "";
        foreach (var name in Names(target, compiler, allowed))
        {
            if (Locate(name, searchPath, firmwareFolder) is { } path)
            {
                yield return path;
            }
        }

        // A path in the database counts only where the user's own words cover it.
        if (
            compiler is not null
            && Path.IsPathRooted(compiler)
            && Array.Exists([.. allowed.Where(glob => glob.Contains('/', StringComparison.Ordinal))], Covers)
            && Usable(compiler, firmwareFolder) is { } named
        )
        {
            yield return named;
        }

        bool Covers(string glob) => FileSystemName.MatchesSimpleExpression(glob, Path.GetFullPath(compiler!));
    }

    /// <summary>The driver as the search path finds it, or null.</summary>
    internal static string? Locate(string driver, string searchPath, string firmwareFolder)
    {
        foreach (var folder in searchPath.Split(Path.PathSeparator))
        {
            if (Path.IsPathRooted(folder) && Usable(Path.Combine(folder, driver), firmwareFolder) is { } path)
            {
                return path;
            }
        }

        return null;
    }

    /// <summary>A path with its links followed.</summary>
    internal static string Resolved(string path)
    {
        try
        {
            return File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;
        }
        catch (IOException)
        {
            return path;
        }
    }

    private static IEnumerable<string> Names(TargetSelection target, string? compiler, IReadOnlyList<string> allowed)
    {
        var named = compiler is null ? "" : Path.GetFileName(compiler.Replace('\\', '/'));
        var isKnown = TargetSelection.KnownDrivers.Any(driver =>
            named == driver
            // avr-gcc-7.3.0
            || (named.StartsWith(driver + "-", StringComparison.Ordinal) && char.IsAsciiDigit(named[driver.Length + 1]))
        );
        var isAllowed = allowed.Any(glob =>
            !glob.Contains('/', StringComparison.Ordinal) && FileSystemName.MatchesSimpleExpression(glob, named)
        );
        return named.Length > 0 && (isKnown || isAllowed) ? target.Drivers.Prepend(named) : target.Drivers;
    }

    private static string? Usable(string path, string firmwareFolder)
    {
        var full = Path.GetFullPath(path);
        var tree = Path.GetFullPath(firmwareFolder);
        return File.Exists(full) && !IsInside(full, tree) && !IsInside(Resolved(full), tree) ? full : null;
    }

    private static bool IsInside(string path, string folder) =>
        path.StartsWith(
            folder.TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar,
            StringComparison.Ordinal
        );
}
