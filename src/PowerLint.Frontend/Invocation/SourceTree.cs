using System.Text;

namespace PowerLint.Frontend;

/// <summary>
/// Finds the sources of a folder, and the folders that their headers lie in, where no build tells. Links are not followed, and what looks
/// like a build's or a test's folder is left out.
/// </summary>
public static class SourceTree
{
    private const int MostFolders = 10_000;
    private const int MostFiles = 20_000;

    private static readonly string[] Sources = [".c", ".cpp", ".cc", ".cxx", ".s", ".S", ".asm"];
    private static readonly string[] Headers = [".h", ".hpp", ".hh", ".inc"];
    private static readonly string[] LeftOut =
    [
        "build",
        "cmake-build-*",
        "CMakeFiles",
        "out",
        "dist",
        "node_modules",
        "test",
        "tests",
        "unittest",
        "unit_test",
        "unit-test",
        "__pycache__",
    ];

    /// <summary>The sources in a folder and below it, in order of their paths.</summary>
    public static IReadOnlyList<string> SourcesIn(string folder) => Files(folder, Sources);

    /// <summary>The folders that hold what some files include, beyond their own, in the order in which they are needed.</summary>
    /// <param name="sources">The sources, absolute.</param>
    public static IReadOnlyList<string> IncludeFolders(IReadOnlyList<string> sources)
    {
        var byName = sources
            .Select(source => FirmwareTree.RootOf(source))
            .Concat(sources.Select(Beside).OfType<string>())
            .Distinct(StringComparer.Ordinal)
            .SelectMany(root => Files(root, Headers))
            .Distinct(StringComparer.Ordinal)
            .ToLookup(path => Path.GetFileName(path), StringComparer.Ordinal);
        var folders = new List<string>();
        var seen = new HashSet<string>(sources, StringComparer.Ordinal);
        var work = new Queue<string>(sources);
        while (work.TryDequeue(out var file))
        {
            foreach (var name in Included(file))
            {
                if (Find(file, name, byName) is not { } header)
                {
                    continue;
                }

                var folder = header[..^(name.Length + 1)];
                if (
                    !string.Equals(folder, Path.GetDirectoryName(file), StringComparison.Ordinal)
                    && !folders.Contains(folder, StringComparer.Ordinal)
                )
                {
                    folders.Add(folder);
                }

                if (seen.Add(header))
                {
                    work.Enqueue(header);
                }
            }
        }

        return folders;
    }

    private static string? Find(string file, string name, ILookup<string, string> byName)
    {
        var own = Path.GetDirectoryName(file)!;
        var beside = Path.Combine(own, name);
        if (File.Exists(beside))
        {
            return Path.GetFullPath(beside) == beside ? beside : null;
        }

        // The one that shares most folders with the including file, then the one nearest to the root.
        var ending = Path.DirectorySeparatorChar + name;
        return byName[Path.GetFileName(name)]
            .Where(path => path.EndsWith(ending, StringComparison.Ordinal))
            .OrderByDescending(path => Shared(path, own))
            .ThenBy(path => path.Length)
            .ThenBy(path => path, StringComparer.Ordinal)
            .FirstOrDefault();
    }

    private static int Shared(string path, string folder) =>
        path.Split(Path.DirectorySeparatorChar)
            .Zip(folder.Split(Path.DirectorySeparatorChar))
            .TakeWhile(pair => string.Equals(pair.First, pair.Second, StringComparison.Ordinal))
            .Count();

    // Where nothing marks the project's root, headers often lie beside the folder of the sources.
    private static string? Beside(string source)
    {
        var parent = Path.GetDirectoryName(Path.GetDirectoryName(source));
        return
            parent is not null && Array.Exists(["include", "inc"], name => Directory.Exists(Path.Combine(parent, name)))
            ? parent
            : null;
    }

    private static IEnumerable<string> Included(string file)
    {
        var text = Encoding.Latin1.GetString(BoundedFile.Read(file) ?? []);
        foreach (var line in text.Split('\n'))
        {
            var trimmed = line.TrimStart();
            if (!trimmed.StartsWith('#') || !trimmed.AsSpan(1).TrimStart().StartsWith("include"))
            {
                continue;
            }

            var parts = trimmed.Split('"', '<', '>');
            if (parts.Length >= 3 && parts[1].Length > 0)
            {
                yield return parts[1].Replace('/', Path.DirectorySeparatorChar);
            }
        }
    }

    private static List<string> Files(string root, string[] extensions)
    {
        var files = new List<string>();
        var folders = new List<DirectoryInfo> { new(root) };
        for (var i = 0; i < folders.Count && i < MostFolders && files.Count < MostFiles; i++)
        {
            try
            {
                files.AddRange(
                    folders[i]
                        .EnumerateFiles()
                        .Where(file =>
                            Array.Exists(extensions, end => file.Name.EndsWith(end, StringComparison.Ordinal))
                        )
                        .Select(file => file.FullName)
                );
                folders.AddRange(
                    folders[i]
                        .EnumerateDirectories()
                        .Where(folder => folder.LinkTarget is null && !IsLeftOut(folder.Name))
                );
            }
            catch (Exception error) when (error is IOException or UnauthorizedAccessException)
            {
                // What cannot be listed is not read.
            }
        }

        files.Sort(StringComparer.Ordinal);
        return files;
    }

    private static bool IsLeftOut(string name) =>
        name.StartsWith('.')
        || Array.Exists(LeftOut, glob => System.IO.Enumeration.FileSystemName.MatchesSimpleExpression(glob, name));
}
