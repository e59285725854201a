using System.Security.Cryptography;
using System.Text;

namespace PowerLint.Frontend;

/// <summary>The headers that the product brings: intrinsics for all, a freestanding set for want of a toolchain's.</summary>
internal static class OwnHeaders
{
    // Names that no file system has: the parser gets their contents from memory.
    public const string Folder = "/powerlint-headers";

    private static readonly Lazy<string> FreestandingFolder = new(() => Unpack("freestanding"));
    private static readonly Lazy<string> PreferredFolder = new(() => Unpack("preferred"));

    /// <summary>The prelude's name.</summary>
    public static string Prelude => $"{Folder}/intrinsics.h";

    /// <summary>The prelude for an architecture, with the macros that a compiler has and the parser lacks.</summary>
    public static UnsavedFile PreludeFile(string architecture, IReadOnlyList<string> macros) =>
        new(
            Prelude,
            [
                .. Read("intrinsics/common.h"),
                .. ReadOptional($"intrinsics/{architecture}.h"),
                .. Encoding.UTF8.GetBytes(
                    string.Concat(macros.Select(macro => $"#ifndef {macro.Split(' ')[0]}\n#define {macro}\n#endif\n"))
                ),
            ]
        );

    /// <summary>A folder with the freestanding headers, written on first use.</summary>
    public static string Freestanding => FreestandingFolder.Value;

    /// <summary>A folder with headers that must come before the toolchain's, whose own suit their compiler only.</summary>
    public static string Preferred => PreferredFolder.Value;

    // Folders must exist for the parser to search them, so these are written out, under a name that follows their contents.
    private static string Unpack(string set)
    {
        var names = typeof(OwnHeaders)
            .Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith($"{set}/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .ToArray();
        var files = names.Select(name => (Name: Path.GetFileName(name), Content: Read(name))).ToArray();
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var (_, content) in files)
        {
            hash.AppendData(content);
        }

        var version = Convert.ToHexStringLower(hash.GetHashAndReset())[..16];
        foreach (var root in (ReadOnlySpan<string?>)[CacheFolder.Path, Path.Combine(Path.GetTempPath(), "powerlint")])
        {
            if (root is not null && TryWrite(Path.Combine(root, "headers", $"{set}-{version}"), files) is { } folder)
            {
                return folder;
            }
        }

        return Path.GetTempPath();
    }

    private static string? TryWrite(string folder, (string Name, byte[] Content)[] files)
    {
        try
        {
            Directory.CreateDirectory(folder);
            foreach (var (name, content) in files)
            {
                var path = Path.Combine(folder, name);
                if (!File.Exists(path) || !File.ReadAllBytes(path).AsSpan().SequenceEqual(content))
                {
                    var draft = $"{path}.{Guid.NewGuid():N}";
                    File.WriteAllBytes(draft, content);
                    File.Move(draft, path, overwrite: true);
                }
            }

            return folder;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static byte[] Read(string name)
    {
        using var stream = typeof(OwnHeaders).Assembly.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static byte[] ReadOptional(string name) =>
        typeof(OwnHeaders).Assembly.GetManifestResourceInfo(name) is null ? [] : Read(name);
}
