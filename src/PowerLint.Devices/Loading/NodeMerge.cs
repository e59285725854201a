namespace PowerLint.Devices;

/// <summary>
/// Lays one mapping over another as JSON Merge Patch does (RFC 7396): mappings merge, anything else replaces, null removes.
/// </summary>
internal static class NodeMerge
{
    /// <summary>The lower mapping with the upper one laid over it. Removals stay in, so that they reach what is put below later.</summary>
    public static MapNode Over(MapNode lower, MapNode upper)
    {
        var merged = new MapNode(upper.File, upper.Line);
        foreach (var (key, value) in lower.Entries)
        {
            merged.Set(key, value);
        }

        foreach (var (key, value) in upper.Entries)
        {
            if (value is MapNode above && merged[key.Text] is MapNode below)
            {
                merged.Set(key, Over(below, above));
            }
            else
            {
                merged.Set(key, value);
            }
        }

        return merged;
    }

    /// <summary>The mapping without what was removed.</summary>
    public static DeviceNode WithoutRemoved(DeviceNode node)
    {
        if (node is not MapNode map)
        {
            return node;
        }

        var kept = new MapNode(map.File, map.Line);
        foreach (var (key, value) in map.Entries)
        {
            if (value is not ScalarNode { IsNull: true })
            {
                kept.Set(key, WithoutRemoved(value));
            }
        }

        return kept;
    }
}
