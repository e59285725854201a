using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>Takes the entries of a mapping by name; what nobody took is an unknown key.</summary>
internal sealed class MapReader
{
    private readonly MapNode _map;
    private readonly string _what;
    private readonly DeviceModelErrors _errors;
    private readonly List<string> _asked = [];

    private MapReader(MapNode map, string what, DeviceModelErrors errors)
    {
        _map = map;
        _what = what;
        _errors = errors;
    }

    public MapNode Node => _map;

    /// <summary>A reader of a node that must be a mapping; an error and an empty mapping where it is none.</summary>
    public static MapReader Of(DeviceNode node, string what, DeviceModelErrors errors)
    {
        if (node is MapNode map)
        {
            return new MapReader(map, what, errors);
        }

        errors.Add(node, $"{what} must be a mapping");
        return new MapReader(new MapNode(node.File, node.Line), what, errors);
    }

    public DeviceNode? Take(string key)
    {
        _asked.Add(key);
        return _map[key];
    }

    public DeviceNode? Need(string key)
    {
        var node = Take(key);
        if (node is null)
        {
            _errors.Add(_map, $"{_what} lacks '{key}'");
        }

        return node;
    }

    public string? Text(string key) => Take(key) is { } node ? TextOf(node, key) : null;

    public string? NeedText(string key) => Need(key) is { } node ? TextOf(node, key) : null;

    public ulong? Number(string key) => Take(key) is { } node ? NumberOf(node, key) : null;

    public ulong? NeedNumber(string key) => Need(key) is { } node ? NumberOf(node, key) : null;

    public double? Real(string key)
    {
        if (Take(key) is not { } node)
        {
            return null;
        }

        if (node is ScalarNode scalar && Numbers.TryParseReal(scalar.Text, out var number))
        {
            return number;
        }

        _errors.Add(node, $"'{key}' of {_what} must be a number");
        return null;
    }

    public double NeedReal(string key)
    {
        if (Need(key) is null)
        {
            return 0;
        }

        return Real(key) ?? 0;
    }

    public bool Flag(string key, bool otherwise)
    {
        if (Take(key) is not { } node)
        {
            return otherwise;
        }

        if (node is ScalarNode { Text: "true" or "false" } scalar)
        {
            return scalar.Text is "true";
        }

        _errors.Add(node, $"'{key}' of {_what} must be true or false");
        return otherwise;
    }

    /// <summary>One text or a list of them.</summary>
    public ImmutableArray<string> Texts(string key) => [.. Scalars(key).Select(scalar => scalar.Text)];

    /// <summary>One value or a list of them, with their places.</summary>
    public IEnumerable<ScalarNode> Scalars(string key)
    {
        var node = Take(key);
        return node is null ? [] : ScalarsOf(node, $"'{key}' of {_what}", _errors);
    }

    public static IEnumerable<ScalarNode> ScalarsOf(DeviceNode node, string what, DeviceModelErrors errors)
    {
        foreach (var item in node is ListNode list ? list.Items : [node])
        {
            if (item is ScalarNode scalar)
            {
                yield return scalar;
            }
            else
            {
                errors.Add(item, $"{what} must be a word or a list of words");
            }
        }
    }

    /// <summary>One of some words.</summary>
    public T Choice<T>(string key, IReadOnlyDictionary<string, T> choices, T otherwise)
    {
        if (Take(key) is not { } node)
        {
            return otherwise;
        }

        if (node is ScalarNode scalar && choices.TryGetValue(scalar.Text, out var choice))
        {
            return choice;
        }

        _errors.Add(node, $"'{key}' of {_what} must be one of {string.Join(", ", choices.Keys)}");
        return otherwise;
    }

    /// <summary>Complains about entries that were not asked for.</summary>
    public void Finish()
    {
        foreach (var (key, _) in _map.Entries)
        {
            if (!_asked.Contains(key.Text))
            {
                _errors.Add(key, $"unknown key '{key.Text}' in {_what}{NearestNames.Hint(key.Text, _asked)}");
            }
        }
    }

    private string? TextOf(DeviceNode node, string key)
    {
        if (node is ScalarNode scalar)
        {
            return scalar.Text;
        }

        _errors.Add(node, $"'{key}' of {_what} must be a single value");
        return null;
    }

    private ulong? NumberOf(DeviceNode node, string key)
    {
        if (node is ScalarNode scalar && Numbers.TryParse(scalar.Text, out var number))
        {
            return number;
        }

        _errors.Add(node, $"'{key}' of {_what} must be a number, such as 36 or 0x24");
        return null;
    }
}
