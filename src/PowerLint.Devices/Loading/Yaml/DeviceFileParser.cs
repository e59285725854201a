using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace PowerLint.Devices;

/// <summary>Reads the YAML of a device file into nodes with their lines, without reflection.</summary>
internal sealed class DeviceFileParser
{
    private readonly string _file;
    private readonly Parser _parser;
    private readonly DeviceModelErrors _errors;

    private DeviceFileParser(string file, TextReader text, DeviceModelErrors errors)
    {
        _file = file;
        _parser = new Parser(text);
        _errors = errors;
    }

    /// <summary>The whole file.</summary>
    public static MapNode ParseAll(string file, TextReader text, DeviceModelErrors errors) =>
        Parse(file, text, errors, lastKeys: []);

    /// <summary>
    /// The file's top-level entries up to some of them, which stand one after the other: the members of a family are told
    /// without reading its register tables.
    /// </summary>
    public static MapNode ParseHead(
        string file,
        TextReader text,
        IReadOnlyList<string> lastKeys,
        DeviceModelErrors errors
    ) => Parse(file, text, errors, lastKeys);

    private static MapNode Parse(string file, TextReader text, DeviceModelErrors errors, IReadOnlyList<string> lastKeys)
    {
        try
        {
            return new DeviceFileParser(file, text, errors).Document(lastKeys);
        }
        catch (YamlException exception)
        {
            errors.Add(file, (int)exception.Start.Line, $"not valid YAML: {Cause(exception)}");
            return new MapNode(file, 1);
        }
        catch (InvalidOperationException)
        {
            // The library's answer to some documents that break off.
            errors.Add(file, 1, "not valid YAML: the text breaks off within a bracket or a quote");
            return new MapNode(file, 1);
        }
    }

    private static string Cause(Exception exception)
    {
        while (exception.InnerException is { } inner)
        {
            exception = inner;
        }

        // YamlDotNet repeats the place in front of the message.
        var at = exception.Message.IndexOf("): ", StringComparison.Ordinal);
        return at < 0 ? exception.Message : exception.Message[(at + 3)..];
    }

    private MapNode Document(IReadOnlyList<string> lastKeys)
    {
        _parser.Consume<StreamStart>();
        if (!_parser.TryConsume<DocumentStart>(out _))
        {
            _errors.Add(_file, 1, "the file is empty: a device file starts with 'family: NAME'");
            return new MapNode(_file, 1);
        }

        if (_parser.Current is not MappingStart start)
        {
            _errors.Add(_file, 1, "a device file is a mapping that starts with 'family: NAME'");
            return new MapNode(_file, 1);
        }

        return Map(start, lastKeys);
    }

    private DeviceNode Node()
    {
        var current = _parser.Current!;
        switch (current)
        {
            case Scalar scalar:
                _parser.MoveNext();
                return ToNode(scalar);
            case SequenceStart sequence:
                _parser.MoveNext();
                var items = new List<DeviceNode>();
                while (!_parser.TryConsume<SequenceEnd>(out _))
                {
                    items.Add(Node());
                }

                return new ListNode(_file, (int)sequence.Start.Line, items);
            case MappingStart mapping:
                return Map(mapping, lastKeys: []);
            default:
                throw new YamlException(
                    current.Start,
                    current.End,
                    "anchors and aliases are not used in device files: use 'blocks' and 'variants'"
                );
        }
    }

    private MapNode Map(MappingStart start, IReadOnlyList<string> lastKeys)
    {
        _parser.MoveNext();
        var map = new MapNode(_file, (int)start.Start.Line);
        while (!_parser.TryConsume<MappingEnd>(out _))
        {
            if (_parser.Current is not Scalar)
            {
                throw new YamlException(_parser.Current!.Start, _parser.Current.End, "a key must be a single word");
            }

            var key = ToNode(_parser.Consume<Scalar>());
            if (lastKeys.Any(map.Contains) && !lastKeys.Contains(key.Text, StringComparer.Ordinal))
            {
                break;
            }

            var value = Node();
            if (map.Contains(key.Text))
            {
                _errors.Add(_file, key.Line, $"'{key.Text}' stands here twice: remove one of the two");
            }

            map.Set(key, value);
        }

        return map;
    }

    private ScalarNode ToNode(Scalar scalar) =>
        new(
            _file,
            (int)scalar.Start.Line,
            scalar.Value,
            scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted
        );
}
