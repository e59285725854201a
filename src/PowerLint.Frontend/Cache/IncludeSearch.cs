using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;

namespace PowerLint.Frontend;

/// <summary>
/// Tells whether a header that is new on disk would now be found instead of one that a unit included. The files that a unit
/// read do not tell: the new one was not among them.
/// </summary>
internal sealed class IncludeSearch
{
    private static readonly string[] FolderFlags = ["-iquote", "-I", "-isystem", "-idirafter", "-iprefix"];

    private readonly ConcurrentDictionary<string, HashSet<string>> _names = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<(string Folders, string File), ulong> _known = new();

    /// <summary>The folders that a command line searches.</summary>
    public static IReadOnlyList<string> Folders(IReadOnlyList<string> arguments, string directory) =>
        Folders(arguments, directory, FolderFlags);

    /// <summary>The folders that some of the flags of a command line name.</summary>
    public static IReadOnlyList<string> Folders(IReadOnlyList<string> arguments, string directory, string[] folderFlags)
    {
        var folders = new List<string>();
        for (var i = 0; i < arguments.Count; i++)
        {
            var flag = Array.Find(folderFlags, known => arguments[i].StartsWith(known, StringComparison.Ordinal));
            if (flag is null)
            {
                continue;
            }

            var folder =
                arguments[i].Length > flag.Length ? arguments[i][flag.Length..]
                : i + 1 < arguments.Count ? arguments[++i]
                : "";
            folders.Add(Path.GetFullPath(Path.Combine(directory, folder)));
        }

        return folders;
    }

    /// <summary>A digest of which files lie in the folders under the names that the included files may have been found by.</summary>
    /// <param name="folders">The folders of the command line.</param>
    /// <param name="files">The included files.</param>
    public byte[] Digest(IReadOnlyList<string> folders, IReadOnlyList<string> files)
    {
        // A name in quotes is looked for beside the including file first.
        var places = folders
            .Concat(files.Select(file => Path.GetDirectoryName(file) ?? ""))
            .Distinct(StringComparer.Ordinal)
            .ToArray();
        var joined = string.Join('\n', places);
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Span<byte> bytes = stackalloc byte[sizeof(ulong)];
        foreach (var file in files)
        {
            if (!_known.TryGetValue((joined, file), out var found))
            {
                found = Find(places, file);
                _known[(joined, file)] = found;
            }

            BitConverter.TryWriteBytes(bytes, found);
            hash.AppendData(bytes);
        }

        return hash.GetHashAndReset();
    }

    private ulong Find(string[] places, string file)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var place in places)
        {
            if (
                file.Length <= place.Length + 1
                || !file.StartsWith(place, StringComparison.Ordinal)
                || file[place.Length] != Path.DirectorySeparatorChar
            )
            {
                continue;
            }

            var name = file[(place.Length + 1)..];
            var last = name.LastIndexOf(Path.DirectorySeparatorChar);
            foreach (var other in places)
            {
                var folder = last < 0 ? other : Path.Combine(other, name[..last]);
                if (Names(folder).Contains(name[(last + 1)..]))
                {
                    hash.AppendData(Encoding.UTF8.GetBytes(Path.Combine(other, name) + "\n"));
                }
            }
        }

        return BitConverter.ToUInt64(hash.GetHashAndReset());
    }

    private HashSet<string> Names(string folder) =>
        _names.GetOrAdd(
            folder,
            static path =>
            {
                try
                {
                    return Directory.Exists(path)
                        ? Directory
                            .EnumerateFiles(path)
                            .Select(name => Path.GetFileName(name))
                            .ToHashSet(StringComparer.Ordinal)
                        : [];
                }
                catch (Exception error) when (error is IOException or UnauthorizedAccessException)
                {
                    return [];
                }
            }
        );
}
