using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>What the readers of a model's sections share: the registers and modes read so far, and the complaints.</summary>
internal sealed class ModelReading(DeviceModelErrors errors)
{
    private readonly Dictionary<ulong, Register> _holders = [];

    public DeviceModelErrors Errors { get; } = errors;

    /// <summary>Registers by name.</summary>
    public Dictionary<string, Register> Registers { get; } = new(StringComparer.Ordinal);

    /// <summary>Further views, by name, of bytes that <see cref="Registers"/> hold.</summary>
    public Dictionary<string, Register> Views { get; } = new(StringComparer.Ordinal);

    /// <summary>Names of the sleep modes, shallowest first.</summary>
    public ImmutableArray<string> Modes { get; set; } = [];

    /// <summary>Named sets of modes.</summary>
    public Dictionary<string, ImmutableArray<string>> ModeSets { get; } = new(StringComparer.Ordinal);

    /// <summary>Documents by their short name.</summary>
    public Dictionary<string, string> Documents { get; } = new(StringComparer.Ordinal);

    /// <summary>The register that holds a byte, or null.</summary>
    public Register? HolderOf(ulong address) => _holders.GetValueOrDefault(address);

    /// <summary>The first of a register's bytes that another one holds.</summary>
    public (Register Holder, ulong Address)? FirstTaken(Register register)
    {
        for (var i = 0; i < register.WidthBits / 8; i++)
        {
            if (HolderOf(register.Address + (ulong)i) is { } holder)
            {
                return (holder, register.Address + (ulong)i);
            }
        }

        return null;
    }

    /// <summary>Adds a register, which holds its bytes from now on.</summary>
    public void Hold(Register register)
    {
        Registers[register.Name] = register;
        for (var i = 0; i < register.WidthBits / 8; i++)
        {
            _holders[register.Address + (ulong)i] = register;
        }
    }

    /// <summary>Entries of a section, each with its name.</summary>
    public IEnumerable<(ScalarNode Name, DeviceNode Value)> Section(MapNode document, string section)
    {
        if (document[section] is not { } node)
        {
            yield break;
        }

        foreach (var (name, value) in MapReader.Of(node, $"'{section}'", Errors).Node.Entries)
        {
            yield return (name, value);
        }
    }

    /// <summary>Mode names, mode sets, or <c>all</c>, one or several.</summary>
    public ImmutableArray<string> ReadModes(DeviceNode node)
    {
        var modes = ImmutableArray.CreateBuilder<string>();
        foreach (var scalar in MapReader.ScalarsOf(node, "modes", Errors))
        {
            AddModes(scalar, modes);
        }

        return [.. Modes.Where(modes.Contains)];
    }

    /// <summary>
    /// Modes in which something holds: a mode, a set of modes, or a list of those and of <c>{ modes: …, when: … }</c>.
    /// </summary>
    public ImmutableArray<ModesWhen> ReadModesWhen(DeviceNode? node)
    {
        if (node is null)
        {
            return [];
        }

        var always = new List<DeviceNode>();
        var conditional = ImmutableArray.CreateBuilder<ModesWhen>();
        foreach (var item in node is ListNode list ? list.Items : [node])
        {
            if (item is not MapNode)
            {
                always.Add(item);
                continue;
            }

            var entry = MapReader.Of(item, "a mode list", Errors);
            var modes = entry.Need("modes");
            var when = ConditionReader.Read(entry.Need("when"), this);
            entry.Finish();
            if (modes is not null)
            {
                conditional.Add(new ModesWhen(ReadModes(modes), when));
            }
        }

        if (always.Count > 0)
        {
            conditional.Insert(
                0,
                new ModesWhen(ReadModes(new ListNode(node.File, node.Line, always)), Condition.Always)
            );
        }

        return [.. conditional.Where(m => !m.Modes.IsEmpty)];
    }

    /// <summary>A source: the short name of a document, a comma, the place in it; or <c>from memory</c>.</summary>
    public Citation ReadSource(ScalarNode node)
    {
        var comma = node.Text.IndexOf(',', StringComparison.Ordinal);
        var document = (comma < 0 ? node.Text : node.Text[..comma]).Trim();
        var place = comma < 0 ? null : node.Text[(comma + 1)..].Trim();
        if (string.Equals(document, "from memory", StringComparison.Ordinal))
        {
            return new Citation(document, place);
        }

        if (!Documents.TryGetValue(document, out var title))
        {
            Errors.Add(
                node,
                $"unknown document '{document}'{NearestNames.Hint(document, Documents.Keys)}: name one of 'documents', or write 'from memory'"
            );
            title = document;
        }

        return new Citation(title, place);
    }

    /// <summary>The source that every figure must name.</summary>
    public Citation ReadSource(MapReader entry)
    {
        if (entry.Need("source") is ScalarNode scalar)
        {
            return ReadSource(scalar);
        }

        return new Citation("from memory", Place: null);
    }

    private void AddModes(ScalarNode scalar, ImmutableArray<string>.Builder modes)
    {
        if (scalar.Text is "all")
        {
            modes.AddRange(Modes);
        }
        else if (scalar.Text is "none")
        {
            return;
        }
        else if (ModeSets.TryGetValue(scalar.Text, out var set))
        {
            modes.AddRange(set);
        }
        else if (Modes.Contains(scalar.Text, StringComparer.Ordinal))
        {
            modes.Add(scalar.Text);
        }
        else
        {
            Errors.Add(
                scalar,
                $"unknown sleep mode '{scalar.Text}'{NearestNames.Hint(scalar.Text, Modes.Concat(ModeSets.Keys))}"
            );
        }
    }
}
