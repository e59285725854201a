using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>
/// Lowered units on disk. A unit is found again by the program's build, the parser's arguments and the main file's content; it is
/// used only where every file that it included still has the content that it had, and no other would be found in its place.
/// Units with errors in them are not kept.
/// </summary>
/// <param name="store">Where they are kept.</param>
internal sealed class UnitCache(CacheStore store)
{
    // Entries that were found and hold, until they are used.
    private readonly ConcurrentDictionary<ParserInvocation, VerifiedEntry> _verified = new(
        ReferenceEqualityComparer.Instance
    );
    private readonly ConcurrentDictionary<ParserInvocation, byte[]> _identities = new(
        ReferenceEqualityComparer.Instance
    );
    private readonly FileHashes _hashes = new();
    private readonly IncludeSearch _search = new();

    /// <summary>The unit of a command as it was lowered before, or null.</summary>
    public TranslationUnit? Find(ParserInvocation invocation)
    {
        if (!Verify(invocation) || !_verified.TryRemove(invocation, out var entry))
        {
            return null;
        }

        try
        {
            return UnitSerializer.Read(entry.Bytes.AsSpan(entry.UnitAt));
        }
        catch (Exception error) when (error is InvalidDataException or IOException or ArgumentException)
        {
            _identities.TryRemove(invocation, out _);
            return null;
        }
    }

    /// <summary>
    /// What tells the unit of a command, with all that it was made from, from any other; null where it is neither kept nor was
    /// found.
    /// </summary>
    public byte[]? Identity(ParserInvocation invocation) => _identities.GetValueOrDefault(invocation);

    /// <summary>Whether the unit of a command is kept, and every file that it was made from is as it was.</summary>
    public bool Verify(ParserInvocation invocation)
    {
        if (_verified.ContainsKey(invocation))
        {
            return true;
        }

        if (
            Key(invocation, _hashes.OnDisk(invocation.Command.File)) is not { } key
            || store.Open(key) is not var (entry, checksum)
        )
        {
            return false;
        }

        try
        {
            using var reader = new BinaryReader(new MemoryStream(entry, writable: false), Encoding.UTF8);
            var files = new string[Bounded(reader.ReadInt32())];
            for (var i = 0; i < files.Length; i++)
            {
                files[i] = reader.ReadString();
                if (!reader.ReadBytes(CacheStore.KeyBytes).AsSpan().SequenceEqual(_hashes.OnDisk(files[i])))
                {
                    return false;
                }
            }

            var digest = reader.ReadBytes(CacheStore.KeyBytes);
            var folders = Folders(invocation);
            if (!digest.AsSpan().SequenceEqual(_search.Digest(folders, files)))
            {
                return false;
            }

            _identities[invocation] = [.. key, .. checksum];
            _verified[invocation] = new VerifiedEntry(entry, (int)reader.BaseStream.Position);
            return true;
        }
        catch (Exception error) when (error is InvalidDataException or IOException or ArgumentException)
        {
            return false;
        }
    }

    /// <summary>Keeps a unit.</summary>
    /// <param name="invocation">The command.</param>
    /// <param name="parsed">The parsed unit that it was lowered from.</param>
    /// <param name="unit">The unit.</param>
    public void Keep(ParserInvocation invocation, ClangUnit parsed, TranslationUnit unit)
    {
        var files = new List<(string Path, byte[] Hash)>();
        byte[]? own = null;
        foreach (var file in parsed.Files().Distinct())
        {
            var path = Path.GetFullPath(
                Path.Combine(invocation.Command.Directory, NativeString.Take(LibClang.clang_getFileName(file)))
            );
            var content = parsed.Contents(file);
            if (string.Equals(path, OwnHeaders.Prelude, StringComparison.Ordinal))
            {
                continue;
            }

            if (_hashes.Parsed(path, LibClang.clang_getFileTime(file), content) is not { } hash)
            {
                return;
            }

            if (string.Equals(path, invocation.Command.File, StringComparison.Ordinal))
            {
                own = hash;
            }
            else
            {
                files.Add((path, hash));
            }
        }

        if (own is null || Key(invocation, own) is not { } key || Bytes(unit) is not { } body)
        {
            return;
        }

        using var entry = new MemoryStream();
        using (var writer = new BinaryWriter(entry, Encoding.UTF8, leaveOpen: true))
        {
            writer.Write(files.Count);
            foreach (var (path, hash) in files)
            {
                writer.Write(path);
                writer.Write(hash);
            }

            var folders = Folders(invocation);
            writer.Write(_search.Digest(folders, [.. files.Select(file => file.Path)]));
            writer.Write(body);
        }

        var checksum = store.Write(key, entry.GetBuffer().AsSpan(0, (int)entry.Length));
        _identities[invocation] = [.. key, .. checksum];
    }

    /// <summary>To be called once all units are read.</summary>
    public void Trim() => store.Trim();

    private static IReadOnlyList<string> Folders(ParserInvocation invocation) =>
        [
            Path.GetDirectoryName(invocation.Command.File) ?? "",
            .. IncludeSearch.Folders(invocation.Arguments, invocation.Command.Directory),
        ];

    // A node that is newer than the writer must not stop the run; the tests see to it that there is none.
    private static byte[]? Bytes(TranslationUnit unit)
    {
        try
        {
            return UnitSerializer.Write(unit);
        }
        catch (Exception error) when (error is NotSupportedException or KeyNotFoundException)
        {
            return null;
        }
    }

    private static byte[]? Key(ParserInvocation invocation, byte[] content)
    {
        if (content.Length == 0)
        {
            return null;
        }

        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(ProgramBuild.Stamp);
        Add(invocation.Command.File);
        Add(invocation.Command.Directory);
        Add(invocation.Part ?? "");
        AddAll(invocation.Arguments);
        AddAll(invocation.Command.Flags);
        AddAll(invocation.Definitions);
        AddAll(invocation.Vectors);
        foreach (var file in invocation.Unsaved)
        {
            Add(file.Path);
            hash.AppendData(SHA256.HashData(file.Content));
        }

        hash.AppendData(content);
        return hash.GetHashAndReset();

        void AddAll(IReadOnlyList<string> texts)
        {
            Add(texts.Count.ToString(System.Globalization.CultureInfo.InvariantCulture));
            foreach (var text in texts)
            {
                Add(text);
            }
        }

        void Add(string text) => hash.AppendData(Encoding.UTF8.GetBytes(text + "\0"));
    }

    private readonly record struct VerifiedEntry(byte[] Bytes, int UnitAt);

    private static int Bounded(int count) =>
        count is >= 0 and < 1_000_000 ? count : throw new InvalidDataException("Not a number of files.");
}
