using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace PowerLint.Devices;

/// <summary>
/// All models of a folder, resolved and checked when the program was built: <c>models.digest</c> beside the files. It counts only as
/// long as it was made from exactly these files for exactly this shape of the model; otherwise the files are read. The files are the
/// source, this is what was last read from them.
/// </summary>
internal sealed class ModelDigest
{
    internal const string FileName = "models.digest";

    // "PLD1": the layout of this file, in memory order.
    private const uint Magic = 0x31444C50;

    private const int HeaderLength = sizeof(uint) + sizeof(ulong) + sizeof(int);

    private readonly string _path;
    private readonly long _modelsAt;
    private readonly Dictionary<string, Slice> _slices;

    private ModelDigest(
        string path,
        long modelsAt,
        FamilyHead[] heads,
        Dictionary<string, Slice> slices,
        ModelFile[] sources
    )
    {
        Sources = sources;
        _path = path;
        _modelsAt = modelsAt;
        Heads = ImmutableCollectionsMarshal.AsImmutableArray(heads);
        _slices = slices;
    }

    /// <summary>The files that it was made from.</summary>
    internal ModelFile[] Sources { get; }

    /// <summary>The families, in order of their files.</summary>
    internal ImmutableArray<FamilyHead> Heads { get; }

    /// <summary>Opens a folder's digest; null where there is none, or it is not of these files.</summary>
    internal static ModelDigest? TryOpen(string folder)
    {
        var path = Path.Combine(folder, FileName);
        if (!File.Exists(path))
        {
            return null;
        }

        using var file = File.OpenHandle(path);
        var header = new byte[HeaderLength];
        if (
            !Fill(file, header, 0)
            || BinaryPrimitives.ReadUInt32LittleEndian(header) != Magic
            || BinaryPrimitives.ReadUInt64LittleEndian(header.AsSpan(sizeof(uint))) != DigestReader.Shape
        )
        {
            return null;
        }

        var index = new byte[BinaryPrimitives.ReadInt32LittleEndian(header.AsSpan(HeaderLength - sizeof(int)))];
        return Fill(file, index, HeaderLength)
            ? ReadIndex(path, HeaderLength + index.Length, index, ModelFile.In(folder))
            : null;
    }

    /// <summary>
    /// Reads a model; null where only the files can tell what is wrong with the options, or what registers that are loaded from
    /// options hold then.
    /// </summary>
    internal DeviceModel? Load(string name, OptionOverrides options)
    {
        var slice = _slices[name];
        var bytes = new byte[slice.Length];
        using (var file = File.OpenHandle(_path))
        {
            if (!Fill(file, bytes, _modelsAt + slice.Start))
            {
                return null;
            }
        }

        var reader = new DigestReader(bytes, options);
        var model = reader.ReadDeviceModel();
        if (options.IsEmpty)
        {
            return model;
        }

        var isPlain = !reader.HasOversizedOption && !options.Unused.Any();
        return isPlain && model?.Registers.Any(register => register.IsLoadedFromOptions) == false ? model : null;
    }

    /// <summary>Digests a folder.</summary>
    /// <exception cref="DeviceModelException">A model is wrong.</exception>
    internal static byte[] Make(string folder)
    {
        var catalog = DeviceCatalog.OpenFiles(folder);
        var index = new DigestWriter();
        var models = new MemoryStream();
        var sources = ModelFile.In(folder);
        index.Count(sources.Length);
        foreach (var source in sources)
        {
            index.Write(Path.GetFileName(source.Path));
            index.Write(source.Hash);
            var members = catalog.MembersIn(source.Path);
            index.Count(members.Length);
            foreach (var member in members)
            {
                var writer = new DigestWriter();
                writer.Write(catalog.Load(member.Name));
                var model = writer.ToArray();
                index.Write(member.Name);
                index.Count(member.At.Line);
                Write(index, member.Macros);
                Write(index, member.Packages);
                index.Count(member.Variants.Length);
                foreach (var variant in member.Variants)
                {
                    index.Count(variant.Line);
                    index.Write(variant.Text);
                }

                index.Count((int)models.Length);
                index.Count(model.Length);
                models.Write(model);
            }
        }

        var indexed = index.ToArray();
        var made = new byte[HeaderLength + indexed.Length + models.Length];
        BinaryPrimitives.WriteUInt32LittleEndian(made, Magic);
        BinaryPrimitives.WriteUInt64LittleEndian(made.AsSpan(sizeof(uint)), DigestReader.Shape);
        BinaryPrimitives.WriteInt32LittleEndian(made.AsSpan(HeaderLength - sizeof(int)), indexed.Length);
        indexed.CopyTo(made, HeaderLength);
        models.ToArray().CopyTo(made, HeaderLength + indexed.Length);
        return made;
    }

    private static ModelDigest? ReadIndex(string path, long modelsAt, byte[] index, ModelFile[] sources)
    {
        var reader = new DigestReader(index, new OptionOverrides(values: null));
        var heads = new FamilyHead[reader.Count()];
        if (heads.Length != sources.Length)
        {
            return null;
        }

        var slices = new Dictionary<string, Slice>(StringComparer.Ordinal);
        for (var i = 0; i < heads.Length; i++)
        {
            var source = sources[i].Path;
            if (
                !string.Equals(reader.ReadString(), Path.GetFileName(source), StringComparison.Ordinal)
                || reader.ReadUInt64() != sources[i].Hash
            )
            {
                return null;
            }

            var members = new FamilyMember[reader.Count()];
            for (var j = 0; j < members.Length; j++)
            {
                members[j] = ReadMember(reader, source);
                slices.Add(members[j].Name, new Slice(reader.Count(), reader.Count()));
            }

            heads[i] = new FamilyHead
            {
                Path = source,
                Members = ImmutableCollectionsMarshal.AsImmutableArray(members),
            };
        }

        return new ModelDigest(path, modelsAt, heads, slices, sources);
    }

    private static FamilyMember ReadMember(DigestReader reader, string source)
    {
        var name = reader.ReadString()!;
        var at = new ScalarNode(source, reader.Count(), name, quoted: false);
        var macros = ReadTexts(reader);
        var packages = ReadTexts(reader);
        var variants = new ScalarNode[reader.Count()];
        for (var i = 0; i < variants.Length; i++)
        {
            var line = reader.Count();
            variants[i] = new ScalarNode(source, line, reader.ReadString()!, quoted: false);
        }

        return new FamilyMember(name, macros, packages, ImmutableCollectionsMarshal.AsImmutableArray(variants), at);
    }

    private static void Write(DigestWriter writer, ImmutableArray<string> texts)
    {
        writer.Count(texts.Length);
        foreach (var text in texts)
        {
            writer.Write(text);
        }
    }

    private static ImmutableArray<string> ReadTexts(DigestReader reader)
    {
        var texts = new string[reader.Count()];
        for (var i = 0; i < texts.Length; i++)
        {
            texts[i] = reader.ReadString()!;
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(texts);
    }

    private static bool Fill(Microsoft.Win32.SafeHandles.SafeFileHandle file, byte[] bytes, long from)
    {
        var filled = 0;
        while (filled < bytes.Length)
        {
            var read = RandomAccess.Read(file, bytes.AsSpan(filled), from + filled);
            if (read == 0)
            {
                return false;
            }

            filled += read;
        }

        return true;
    }

    /// <summary>Where a model lies among the models.</summary>
    private sealed record Slice(int Start, int Length);
}
