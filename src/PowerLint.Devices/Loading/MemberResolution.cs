namespace PowerLint.Devices;

/// <summary>
/// Puts a member together: what the family extends, the family, its variants in order, and below all of that the blocks of
/// its instances.
/// </summary>
internal sealed class MemberResolution(string folder, DeviceModelErrors errors)
{
    private const int DeepestExtension = 4;

    /// <summary>Keys that say how a model is put together rather than what is in it.</summary>
    private static readonly string[] Structure =
    [
        "family",
        "core",
        "extends",
        "members",
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

                if (Expand(name, value, blocks) is { } expanded)
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

    private MapNode? Expand(ScalarNode name, DeviceNode value, MapNode? blocks)
    {
        var entry = MapReader.Of(value, $"instance {name.Text}", errors);
        if (entry.NeedText("block") is not { } block)
        {
            return null;
        }

        if (blocks?[block] is not MapNode body)
        {
            errors.Add(
                value,
                $"unknown block '{block}'{NearestNames.Hint(block, blocks?.Entries.Select(b => b.Key.Text) ?? [])}"
            );
            return null;
        }

        var values = new Dictionary<string, DeviceNode>(StringComparer.Ordinal) { ["name"] = name };
        // These are filled later, once a pin.
        foreach (var later in (ReadOnlySpan<string>)["bit", "pin", "port", "n"])
        {
            values[later] = new ScalarNode(name.File, name.Line, $"{{{later}}}", quoted: false);
        }

        foreach (var (key, part) in entry.Node.Entries)
        {
            values[key.Text] = part;
        }

        return (MapNode)Placeholders.Fill(body, values, errors);
    }
}
