using System.Text.RegularExpressions;

namespace PowerLint.Frontend;

/// <summary>Says which headers are missing, and how to point at them.</summary>
internal static partial class MissingHeaders
{
    private const int MostFolders = 5000;

    /// <summary>Adds the notices for the headers that errors speak of.</summary>
    public static void Note(IEnumerable<SourceError> errors, TargetSelection target, NoticeList notices)
    {
        var missing = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var error in errors)
        {
            if (NotFound().Match(error.Message) is { Success: true } match)
            {
                missing.TryAdd(match.Groups["header"].Value, error.Path);
            }
        }

        if (missing.Count == 0)
        {
            return;
        }

        var tree = FirmwareTree.RootOf(missing.First().Value);
        var folders = Folders(tree);
        foreach (var header in missing.Keys)
        {
            if (folders.Find(folder => File.Exists(Path.Combine(folder, header))) is { } folder)
            {
                notices.Add(
                    "header-elsewhere",
                    "Headers were not found where the flags look, but lie in the tree: name the folder with --header-folder, or mend the flags",
                    $"{header} in {Path.GetRelativePath(tree, folder)}"
                );
            }
            else
            {
                notices.Add(
                    "header-missing",
                    $"Headers were not found. Those of the tool chain come with {target.Drivers[0]}: install it, let it be asked with --allow-driver, "
                        + "or name the folder that holds them with --header-folder. They are",
                    header
                );
            }
        }
    }

    // Breadth first, links not followed: what lies nearest to the root is likeliest.
    private static List<string> Folders(string root)
    {
        var folders = new List<string> { root };
        for (var i = 0; i < folders.Count && folders.Count < MostFolders; i++)
        {
            try
            {
                folders.AddRange(
                    new DirectoryInfo(folders[i])
                        .EnumerateDirectories()
                        .Where(folder => folder.LinkTarget is null && !folder.Name.StartsWith('.'))
                        .Select(folder => folder.FullName)
                        .Order(StringComparer.Ordinal)
                );
            }
            catch (Exception error) when (error is IOException or UnauthorizedAccessException)
            {
                // What cannot be listed holds nothing for us.
            }
        }

        return folders;
    }

    [GeneratedRegex("^'(?<header>[^']+)' file not found", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex NotFound();
}
