using System.Collections.Concurrent;
using System.Security.Cryptography;

namespace PowerLint.Frontend;

/// <summary>Hashes of files' contents, each file read once in a run.</summary>
internal sealed class FileHashes
{
    private readonly ConcurrentDictionary<string, byte[]> _onDisk = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<(string Path, long Length, long Time), byte[]?> _parsed = new();

    /// <summary>The hash of a file as it is on disk; empty where it cannot be read.</summary>
    public byte[] OnDisk(string path) => _onDisk.GetOrAdd(path, Read);

    /// <summary>
    /// The hash of a file as the parser saw it; null where it may ask for, or take in, files that the parser does not count as
    /// included.
    /// </summary>
    /// <param name="path">Its path.</param>
    /// <param name="time">When it was last written, as the parser saw it.</param>
    /// <param name="content">What the parser holds of it.</param>
    public byte[]? Parsed(string path, long time, ReadOnlySpan<byte> content)
    {
        // Units share headers: the same time and length is the same file.
        var key = (path, content.Length, time);
        if (!_parsed.TryGetValue(key, out var hash))
        {
            hash = content.IndexOf("__has_include"u8) >= 0 || Embeds(content) ? null : SHA256.HashData(content);
            _parsed[key] = hash;
        }

        return hash;
    }

    // #embed, with blanks as the preprocessor allows them.
    private static bool Embeds(ReadOnlySpan<byte> content)
    {
        for (var rest = content; rest.IndexOf("embed"u8) is >= 0 and var at; rest = rest[(at + 1)..])
        {
            if (rest[..at].TrimEnd(" \t"u8).EndsWith("#"u8))
            {
                return true;
            }
        }

        return false;
    }

    private static byte[] Read(string path)
    {
        try
        {
            if (BoundedFile.Length(path) is null or 0)
            {
                return [];
            }

            using var file = new FileStream(
                path,
                new FileStreamOptions { Options = FileOptions.SequentialScan, BufferSize = 0 }
            );
            return SHA256.HashData(file);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
