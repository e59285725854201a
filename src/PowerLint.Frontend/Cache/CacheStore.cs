using System.Security.Cryptography;

namespace PowerLint.Frontend;

/// <summary>
/// Entries on disk, each in a file of its own under the hash that is its key. Whatever is wrong with a file, it is only a
/// miss: an entry carries its key and a checksum, appears under its name whole or not at all, and several processes may use one
/// folder at a time.
/// </summary>
/// <param name="folder">Where the entries lie.</param>
/// <param name="mostBytes">How much they may take together; the longest unused go first.</param>
public sealed class CacheStore(string folder, long mostBytes = CacheStore.DefaultMostBytes)
{
    /// <summary>How much they may take together, where nothing else is said.</summary>
    public const long DefaultMostBytes = 512L * 1024 * 1024;

    /// <summary>Bytes of a key.</summary>
    public const int KeyBytes = SHA256.HashSizeInBytes;

    private const string Draft = ".draft";
    private const string Entry = ".entry";

    // Uses within this time do not count anew: a file's time is not written on every run.
    private static readonly TimeSpan UseGranularity = TimeSpan.FromHours(1);

    private int _written;

    private static ReadOnlySpan<byte> Mark => "PLCACHE1"u8;

    private static int HeadBytes => Mark.Length + KeyBytes + SHA256.HashSizeInBytes;

    /// <summary>What is stored under a key, or null.</summary>
    public byte[]? Read(ReadOnlySpan<byte> key) => Open(key)?.Content;

    /// <summary>What is stored under a key, with its checksum, or null.</summary>
    internal (byte[] Content, byte[] Checksum)? Open(ReadOnlySpan<byte> key)
    {
        try
        {
            var path = PathOf(key);
            if (!File.Exists(path))
            {
                return null;
            }

            var bytes = File.ReadAllBytes(path);
            var head = bytes.AsSpan(0, Math.Min(HeadBytes, bytes.Length));
            if (
                head.Length < HeadBytes
                || !head.StartsWith(Mark)
                || !head.Slice(Mark.Length, KeyBytes).SequenceEqual(key)
            )
            {
                return null;
            }

            var checksum = SHA256.HashData(bytes.AsSpan(HeadBytes));
            if (!checksum.AsSpan().SequenceEqual(head[(Mark.Length + KeyBytes)..]))
            {
                return null;
            }

            MarkUsed(path);
            return (bytes[HeadBytes..], checksum);
        }
        catch (Exception error) when (IsOfFileSystem(error))
        {
            return null;
        }
    }

    /// <summary>Stores an entry; where that fails, it is not stored.</summary>
    /// <returns>Its checksum.</returns>
    public byte[] Write(ReadOnlySpan<byte> key, ReadOnlySpan<byte> content)
    {
        var checksum = SHA256.HashData(content);
        var path = PathOf(key);
        var draft = $"{path}.{Guid.NewGuid():N}{Draft}";
        try
        {
            CreateFolder(Path.GetDirectoryName(path)!);
            var bytes = new byte[HeadBytes + content.Length];
            Mark.CopyTo(bytes);
            key.CopyTo(bytes.AsSpan(Mark.Length));
            checksum.CopyTo(bytes.AsSpan(Mark.Length + KeyBytes));
            content.CopyTo(bytes.AsSpan(HeadBytes));
            File.WriteAllBytes(draft, bytes);
            File.Move(draft, path, overwrite: true);
            Interlocked.Increment(ref _written);
        }
        catch (Exception error) when (IsOfFileSystem(error))
        {
            Delete(draft);
        }

        return checksum;
    }

    /// <summary>Keeps the folder within its bound, where anything was added to it.</summary>
    public void Trim()
    {
        if (Interlocked.Exchange(ref _written, 0) == 0)
        {
            return;
        }

        try
        {
            var now = TimeProvider.System.GetUtcNow().UtcDateTime;
            var files = new DirectoryInfo(folder).EnumerateFiles("*", SearchOption.AllDirectories).ToList();
            foreach (
                var left in files.Where(file =>
                    file.Name.EndsWith(Draft, StringComparison.Ordinal) && now - file.LastWriteTimeUtc > UseGranularity
                )
            )
            {
                // Of a process that ended too early.
                Delete(left.FullName);
            }

            var entries = files.Where(file => file.Name.EndsWith(Entry, StringComparison.Ordinal)).ToList();
            var total = entries.Sum(file => file.Length);
            if (total <= mostBytes)
            {
                return;
            }

            // Somewhat below the bound, so that not every run has to do this.
            foreach (
                var oldest in entries
                    .OrderBy(file => file.LastWriteTimeUtc)
                    .ThenBy(file => file.Name, StringComparer.Ordinal)
                    .TakeWhile(_ => total > mostBytes / 10 * 9)
            )
            {
                total -= oldest.Length;
                Delete(oldest.FullName);
            }
        }
        catch (Exception error) when (IsOfFileSystem(error))
        {
            // Another process is at it, or will be.
        }
    }

    private string PathOf(ReadOnlySpan<byte> key)
    {
        var name = Convert.ToHexStringLower(key);
        return Path.Combine(folder, name[..2], name[2..] + Entry);
    }

    private static void MarkUsed(string path)
    {
        var now = TimeProvider.System.GetUtcNow().UtcDateTime;
        if (now - File.GetLastWriteTimeUtc(path) > UseGranularity)
        {
            File.SetLastWriteTimeUtc(path, now);
        }
    }

    // What firmware holds is nobody else's business.
    private static void CreateFolder(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(path);
        }
        else
        {
            Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    private static void Delete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception error) when (IsOfFileSystem(error))
        {
            // Another process uses it, or has deleted it.
        }
    }

    private static bool IsOfFileSystem(Exception error) =>
        error
            is IOException
                or UnauthorizedAccessException
                or NotSupportedException
                or System.Security.SecurityException;
}
