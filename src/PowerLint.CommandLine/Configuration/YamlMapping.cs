using System.Globalization;
using PowerLint.Devices;
using YamlDotNet.RepresentationModel;

namespace PowerLint.CommandLine;

/// <summary>A YAML mapping whose keys are asked for by name; errors are collected with their lines.</summary>
internal sealed class YamlMapping
{
    private readonly string _file;
    private readonly string _place;
    private readonly List<ConfigurationError> _errors;
    private readonly List<(string Key, YamlNode KeyNode, YamlNode Value)> _entries = [];

    private YamlMapping(string file, string place, List<ConfigurationError> errors)
    {
        _file = file;
        _place = place;
        _errors = errors;
    }

    /// <summary>Its entries in the order of the file.</summary>
    internal IEnumerable<(string Key, int Line, YamlNode Value)> Entries =>
        _entries.Select(entry => (entry.Key, (int)entry.KeyNode.Start.Line, entry.Value));

    /// <summary>Takes a node as a mapping; null, with an error, where it is none.</summary>
    /// <param name="file">The file, for errors.</param>
    /// <param name="place">What the mapping is, for errors: <c>board</c>.</param>
    /// <param name="node">The node.</param>
    /// <param name="errors">Where errors go.</param>
    internal static YamlMapping? From(string file, string place, YamlNode node, List<ConfigurationError> errors)
    {
        if (node is not YamlMappingNode mapping)
        {
            errors.Add(
                new ConfigurationError(file, (int)node.Start.Line, $"{place} must be a mapping of keys to values")
            );
            return null;
        }

        var result = new YamlMapping(file, place, errors);
        foreach (var (key, value) in mapping.Children)
        {
            if (key is YamlScalarNode { Value: { } name })
            {
                result._entries.Add((name, key, value));
            }
            else
            {
                result.Error(key, $"a key of {place} must be a plain word");
            }
        }

        return result;
    }

    /// <summary>Adds an error for every key that is not in a list.</summary>
    internal void Allow(params string[] keys)
    {
        foreach (var (key, node, _) in _entries)
        {
            if (!keys.Contains(key, StringComparer.Ordinal))
            {
                var near = NearestNames.Hint(key, keys);
                var hint = near.Length > 0 ? near : $"; known keys: {string.Join(", ", keys)}";
                Error(node, $"unknown key '{key}' in {_place}{hint}");
            }
        }
    }

    /// <summary>The mapping under a key, or null.</summary>
    internal YamlMapping? Mapping(string key) => Find(key) is { } node ? From(_file, Inside(key), node, _errors) : null;

    /// <summary>A text, or null.</summary>
    internal string? Text(string key)
    {
        if (Find(key) is not { } node)
        {
            return null;
        }

        if (node is YamlScalarNode { Value.Length: > 0 } scalar)
        {
            return scalar.Value;
        }

        Error(node, $"{Inside(key)} must be a text");
        return null;
    }

    /// <summary>A number above zero (or from zero on), or null.</summary>
    internal double? Number(string key, bool mayBeZero = false, double maximum = double.MaxValue)
    {
        if (Find(key) is not { } node)
        {
            return null;
        }

        if (
            node is YamlScalarNode { Value: { } text }
            && double.TryParse(
                text.Replace("_", "", StringComparison.Ordinal),
                NumberStyles.Float,
                CultureInfo.InvariantCulture,
                out var value
            )
            && double.IsFinite(value)
            && (value > 0 || (mayBeZero && value == 0))
            && value <= maximum
        )
        {
            return value;
        }

        var range = mayBeZero ? "a number, 0 or more" : "a number above 0";
        var limit =
            maximum < double.MaxValue ? string.Create(CultureInfo.InvariantCulture, $" and at most {maximum}") : "";
        Error(node, $"{Inside(key)} must be {range}{limit}");
        return null;
    }

    /// <summary>Yes or no, or null.</summary>
    internal bool? Flag(string key)
    {
        if (Find(key) is not { } node)
        {
            return null;
        }

        switch ((node as YamlScalarNode)?.Value?.ToUpperInvariant())
        {
            case "YES" or "TRUE":
                return true;
            case "NO" or "FALSE":
                return false;
            default:
                Error(node, $"{Inside(key)} must be yes or no");
                return null;
        }
    }

    /// <summary>One of some words, or null.</summary>
    internal T? Choice<T>(string key, IReadOnlyDictionary<string, T> words)
        where T : struct => Find(key) is { } node ? Choice(Inside(key), node, words) : null;

    /// <summary>A node as one of some words, or null with an error.</summary>
    internal T? Choice<T>(string place, YamlNode node, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        if (node is YamlScalarNode { Value: { } text } && words.TryGetValue(text, out var value))
        {
            return value;
        }

        Error(node, $"{place} must be one of {string.Join(", ", words.Keys)}");
        return null;
    }

    /// <summary>A list, empty where the key is missing.</summary>
    internal IReadOnlyList<YamlNode> List(string key)
    {
        if (Find(key) is not { } node)
        {
            return [];
        }

        if (node is YamlSequenceNode sequence)
        {
            return [.. sequence.Children];
        }

        Error(node, $"{Inside(key)} must be a list");
        return [];
    }

    /// <summary>Adds an error at a node.</summary>
    internal void Error(YamlNode node, string message) =>
        _errors.Add(new ConfigurationError(_file, (int)node.Start.Line, message));

    /// <summary>Adds an error at a line.</summary>
    internal void Error(int line, string message) => _errors.Add(new ConfigurationError(_file, line, message));

    private string Inside(string key) =>
        string.Equals(_place, "the file", StringComparison.Ordinal) ? key : $"{_place}.{key}";

    private YamlNode? Find(string key) =>
        _entries.Find(entry => string.Equals(entry.Key, key, StringComparison.Ordinal)).Value;
}
