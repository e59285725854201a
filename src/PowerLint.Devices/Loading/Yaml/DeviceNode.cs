namespace PowerLint.Devices;

/// <summary>A value in a device file that remembers where it stands.</summary>
internal abstract class DeviceNode(string file, int line)
{
    public string File { get; } = file;

    /// <summary>From 1.</summary>
    public int Line { get; } = line;
}

/// <summary>A single value.</summary>
internal sealed class ScalarNode(string file, int line, string text, bool quoted) : DeviceNode(file, line)
{
    public string Text { get; } = text;

    public bool Quoted { get; } = quoted;

    /// <summary>Whether it stands for nothing: such a value removes what it is merged over.</summary>
    public bool IsNull => !Quoted && Text is "" or "~" or "null";
}

/// <summary>A sequence.</summary>
internal sealed class ListNode(string file, int line, IReadOnlyList<DeviceNode> items) : DeviceNode(file, line)
{
    public IReadOnlyList<DeviceNode> Items { get; } = items;
}

/// <summary>A mapping, in the order of the file.</summary>
internal sealed class MapNode(string file, int line) : DeviceNode(file, line)
{
    private readonly Dictionary<string, int> _places = new(StringComparer.Ordinal);
    private readonly List<KeyValuePair<ScalarNode, DeviceNode>> _entries = [];

    public IReadOnlyList<KeyValuePair<ScalarNode, DeviceNode>> Entries => _entries;

    public DeviceNode? this[string key] => _places.TryGetValue(key, out var place) ? _entries[place].Value : null;

    public bool Contains(string key) => _places.ContainsKey(key);

    /// <summary>Adds an entry, or replaces the one of that name where it stands.</summary>
    public void Set(ScalarNode key, DeviceNode value)
    {
        if (_places.TryGetValue(key.Text, out var place))
        {
            _entries[place] = new(key, value);
            return;
        }

        _places.Add(key.Text, _entries.Count);
        _entries.Add(new(key, value));
    }
}
