using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>
/// The device models of a folder: names parts, recognises one from a compiler's flags, loads one. Models come from the digest
/// beside the files where it is of these files; otherwise the file of the part's family, and what it extends, is read.
/// </summary>
public sealed class DeviceCatalog
{
    private readonly string _folder;
    private readonly ImmutableArray<FamilyHead> _heads;
    private readonly ModelDigest? _digest;
    private readonly Dictionary<string, Place> _members = new(StringComparer.Ordinal);

    private DeviceCatalog(
        string folder,
        ImmutableArray<FamilyHead> heads,
        ModelDigest? digest,
        DeviceModelErrors errors
    )
    {
        _folder = folder;
        _heads = heads;
        _digest = digest;
        foreach (var head in heads)
        {
            foreach (var member in head.Members)
            {
                if (!_members.TryAdd(member.Name, new Place(head, member)))
                {
                    errors.Add(
                        member.At,
                        $"the part {member.Name} is also a member in {_members[member.Name].Head.Path}: name it once"
                    );
                }
            }
        }
    }

    /// <summary>The folder that comes with the program: <c>devices</c> next to the executable.</summary>
    public static string DefaultFolder => Path.Combine(AppContext.BaseDirectory, "devices");

    /// <summary>Parts that can be loaded, as their compilers name them, in order.</summary>
    public ImmutableArray<string> Names => [.. _members.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Families with their members, in order of the family's name.</summary>
    public ImmutableArray<(string Family, ImmutableArray<string> Members)> Families =>
        [
            .. _heads
                .Where(head => !head.Members.IsEmpty)
                .Select(head =>
                    (Path.GetFileNameWithoutExtension(head.Path), head.Members.Select(m => m.Name).ToImmutableArray())
                ),
        ];

    /// <summary>Opens the models of a folder.</summary>
    /// <param name="folder">The folder; <see cref="DefaultFolder"/> where null.</param>
    /// <exception cref="DeviceModelException">The folder cannot be read, or the head of a file is wrong.</exception>
    public static DeviceCatalog Open(string? folder = null)
    {
        folder ??= DefaultFolder;
        return ModelDigest.TryOpen(folder) is { } digest
            ? new DeviceCatalog(folder, digest.Heads, digest, new DeviceModelErrors())
            : OpenFiles(folder);
    }

    /// <summary>Opens the models of a folder from their files alone.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="DeviceModelException">The folder cannot be read, or the head of a file is wrong.</exception>
    internal static DeviceCatalog OpenFiles(string folder)
    {
        var errors = new DeviceModelErrors();
        if (!Directory.Exists(folder))
        {
            errors.Add(
                folder,
                0,
                "this folder of device models does not exist: install PowerLint anew, or name another folder"
            );
            errors.ThrowIfAny();
        }

        ImmutableArray<FamilyHead> heads =
        [
            .. Directory
                .EnumerateFiles(folder, "*.yaml")
                .Order(StringComparer.Ordinal)
                .Select(path => FamilyHead.Read(path, errors)),
        ];
        var catalog = new DeviceCatalog(folder, heads, digest: null, errors);
        errors.ThrowIfAny();
        return catalog;
    }

    /// <summary>A hash over the models' files: what was worked out with one set of them is nothing to another.</summary>
    public byte[] Stamp() => ModelFile.Stamp(_digest?.Sources ?? ModelFile.In(_folder));

    /// <summary>Whether models come from a digest.</summary>
    internal bool IsDigested => _digest is not null;

    /// <summary>The members that a file lists.</summary>
    internal ImmutableArray<FamilyMember> MembersIn(string path) =>
        _heads.First(head => string.Equals(head.Path, path, StringComparison.Ordinal)).Members;

    /// <summary>Whether there is a model of that name.</summary>
    public bool Has(string name) => Find(name) is not null;

    /// <summary>Parts with a similar name, nearest first.</summary>
    public ImmutableArray<string> Nearest(string name, int count = 5) => [.. NearestNames.Of(name, Names, count)];

    /// <summary>Loads a part's model.</summary>
    /// <param name="name">The part as its compiler names it; capitals do not matter.</param>
    /// <param name="optionOverrides">Fuses and option bytes that differ from the factory's, by <c>LFUSE</c> or <c>LFUSE.CKOUT</c>.</param>
    /// <exception cref="DeviceModelException">There is no such model, its file is wrong, or an option does not exist.</exception>
    public DeviceModel Load(string name, IReadOnlyDictionary<string, ulong>? optionOverrides = null)
    {
        ArgumentNullException.ThrowIfNull(name);
        var errors = new DeviceModelErrors();
        if (Find(name) is not { } found)
        {
            errors.Add(_folder, 0, $"no model of a device '{name}'{NearestNames.Hint(name, Names)}");
            errors.ThrowIfAny();
            throw new InvalidOperationException("unreachable");
        }

        var (head, member) = found;
        if (_digest?.Load(member.Name, new OptionOverrides(optionOverrides)) is { } digested)
        {
            return digested;
        }

        using var text = new StreamReader(head.Path);
        var family = DeviceFileParser.ParseAll(head.Path, text, errors);
        errors.ThrowIfAny();
        var familyName = (family["family"] as ScalarNode)?.Text;
        if (!string.Equals(familyName, Path.GetFileNameWithoutExtension(head.Path), StringComparison.Ordinal))
        {
            errors.Add(family["family"] ?? family, "'family' must be the file's own name without .yaml");
        }

        var document = new MemberResolution(_folder, errors).Resolve(family, member);
        var core = (family["core"] as ScalarNode)?.Text;
        if (core is null)
        {
            errors.Add(family, "'core' is missing: avr, xmega, msp430, cortex-m0+, …");
        }

        // A model built from a broken document would only tell the same mistakes once more.
        errors.ThrowIfAny();
        var model = new DeviceModelBuilder(errors).Build(
            familyName!,
            core!,
            member,
            document,
            new OptionOverrides(optionOverrides)
        );
        errors.ThrowIfAny();
        return model;
    }

    /// <summary>Recognises the part from the compiler's flags and macros.</summary>
    /// <param name="compilerFlags">Flags as the compile database records them: <c>-mmcu=atmega328p</c>, <c>-DSTM32L053xx</c>.</param>
    /// <param name="macros">Macros known otherwise, with their values.</param>
    public DeviceDetection Detect(IEnumerable<string> compilerFlags, IReadOnlyDictionary<string, string> macros)
    {
        ArgumentNullException.ThrowIfNull(compilerFlags);
        ArgumentNullException.ThrowIfNull(macros);
        var evidence = new SortedDictionary<string, string>(StringComparer.Ordinal);
        string? asked = null;
        var defined = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var macro in macros.Keys)
        {
            defined[macro] = macro;
        }

        foreach (var (option, value, flag) in DeviceFlags.Read(compilerFlags))
        {
            if (option is "-D")
            {
                defined[value] = flag;
            }
            else if (Find(value) is { } found)
            {
                evidence.TryAdd(found.Member.Name, flag);
            }
            else if (!DeviceFlags.IsArchitecture(value))
            {
                asked ??= value;
            }
        }

        foreach (var (_, member) in _members.Values)
        {
            if (member.Macros.FirstOrDefault(defined.ContainsKey) is { } macro)
            {
                evidence.TryAdd(member.Name, defined[macro]);
            }
        }

        return evidence.Count switch
        {
            // A flag that names a part without a model is not overruled by a macro that happens to fit another.
            1 when asked is null => new DeviceDetection.Match(evidence.Keys.First(), evidence.Values.First()),
            0 => new DeviceDetection.Unknown(asked, asked is null ? [] : Nearest(asked)),
            1 => new DeviceDetection.Unknown(asked, [evidence.Keys.First()]),
            _ => new DeviceDetection.Ambiguous([.. evidence.Keys], [.. evidence.Values]),
        };
    }

    private Place? Find(string name) =>
        _members.TryGetValue(name, out var found) || _members.TryGetValue(name.ToLowerInvariant(), out found)
            ? found
            : null;

    /// <summary>Where a part stands.</summary>
    private sealed record Place(FamilyHead Head, FamilyMember Member);
}
