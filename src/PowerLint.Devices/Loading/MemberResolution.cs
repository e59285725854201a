using System.Globalization;

namespace PowerLint.Devices;

/// <summary>
/// Puts a member together: what the family extends, the family, its variants in order, and below all of that the blocks of
/// its instances.
/// </summary>
internal sealed class MemberResolution(string folder, DeviceModelErrors errors)
{
    private const int DeepestExtension = 4;
    private const ulong MostInstances = 256;

    /// <summary>Keys that say how a model is put together rather than what is in it.</summary>
    private static readonly string[] Structure =
    [
        "family",
        "core",
        "extends",
        "members",
        "member-patterns",
        "variants",
        "blocks",
        "instances",
    ];

    /// <summary>The member's sections, resolved.</summary>
    public MapNode Resolve(MapNode family, FamilyMember member)
    {
        var document = WithExtended(family, depth: 0);
        var variants = document["variants"] as MapNode;
        foreach (var variant in member.Variants)
        {
            if (variants?[variant.Text] is MapNode overlay)
            {
                document = NodeMerge.Over(document, overlay);
            }
            else
            {
                errors.Add(
                    variant,
                    $"unknown variant '{variant.Text}'{NearestNames.Hint(variant.Text, variants?.Entries.Select(v => v.Key.Text) ?? [])}"
                );
            }
        }

        return (MapNode)NodeMerge.WithoutRemoved(WithInstances(document));
    }

    private MapNode WithExtended(MapNode document, int depth)
    {
        if (document["extends"] is not { } node)
        {
            return document;
        }

        if (node is not ScalarNode { Text: var name } || depth >= DeepestExtension)
        {
            errors.Add(node, "'extends' names one other file of this folder, without .yaml, and not itself");
            return document;
        }

        var path = Path.Combine(folder, name + ".yaml");
        if (!File.Exists(path))
        {
            var names = Directory.EnumerateFiles(folder, "*.yaml").Select(p => Path.GetFileNameWithoutExtension(p)!);
            errors.Add(
                node,
                $"'extends' names the file {name}.yaml, which does not exist{NearestNames.Hint(name, names)}"
            );
            return document;
        }

        using var text = new StreamReader(path);
        var extended = WithExtended(DeviceFileParser.ParseAll(path, text, errors), depth + 1);
        return NodeMerge.Over(extended, document);
    }

    private MapNode WithInstances(MapNode document)
    {
        var blocks = document["blocks"] as MapNode;
        var below = new MapNode(document.File, document.Line);
        if (document["instances"] is { } instances)
        {
            foreach (var (name, value) in MapReader.Of(instances, "'instances'", errors).Node.Entries)
            {
                if (value is ScalarNode { IsNull: true })
                {
                    continue;
                }

                foreach (var expanded in Expand(name, value, blocks))
                {
                    below = NodeMerge.Over(below, expanded);
                }
            }
        }

        var own = new MapNode(document.File, document.Line);
        foreach (var (key, value) in document.Entries)
        {
            if (!Structure.Contains(key.Text, StringComparer.Ordinal))
            {
                own.Set(key, value);
            }
        }

        return NodeMerge.Over(below, own);
    }

    private IEnumerable<MapNode> Expand(ScalarNode name, DeviceNode value, MapNode? blocks)
    {
        var entry = MapReader.Of(value, $"instance {name.Text}", errors);
        if (entry.NeedText("block") is not { } block)
        {
            yield break;
        }

        if (blocks?[block] is not MapNode body)
        {
            errors.Add(
                value,
                $"unknown block '{block}'{NearestNames.Hint(block, blocks?.Entries.Select(b => b.Key.Text) ?? [])}"
            );
            yield break;
        }

        var count = entry.Number("count");
        if (count is 0 or > MostInstances)
        {
            errors.Add(value, $"'count' of instance {name.Text} is a number from 1 to {MostInstances}");
            count = 1;
        }

        for (var i = 0UL; i < (count ?? 1); i++)
        {
            yield return (MapNode)Placeholders.Fill(body, Values(name, entry.Node, count is null ? null : i), errors);
        }
    }

    // What fills a block's placeholders. Of an instance that counts, `i` is the number, and `{ from: 0x700, step: 4 }` counts along.
    private Dictionary<string, DeviceNode> Values(ScalarNode name, MapNode instance, ulong? index)
    {
        var values = new Dictionary<string, DeviceNode>(StringComparer.Ordinal) { ["name"] = name };
        // These are filled later, once a pin.
        foreach (var later in (ReadOnlySpan<string>)["bit", "pin", "port", "n"])
        {
            values[later] = new ScalarNode(name.File, name.Line, $"{{{later}}}", quoted: false);
        }

        if (index is { } i)
        {
            values["i"] = Number(name, i);
        }

        foreach (var (key, part) in instance.Entries)
        {
            values[key.Text] = index is { } at && part is MapNode counting ? Counted(counting, at) : part;
        }

        return values;
    }

    private DeviceNode Counted(MapNode counting, ulong index)
    {
        var entry = MapReader.Of(counting, "a counting value", errors);
        var from = entry.NeedNumber("from") ?? 0;
        var step = entry.NeedNumber("step") ?? 0;
        entry.Finish();
        return Number(counting, from + (index * step));
    }

    private static ScalarNode Number(DeviceNode at, ulong number) =>
        new(at.File, at.Line, number.ToString(CultureInfo.InvariantCulture), quoted: false);
}
