using System.Globalization;
using System.Text;

namespace PowerLint.Devices;

/// <summary>Fills <c>{name}</c>, <c>{name+4}</c> and <c>{name:2}</c> (two digits at least) in keys and values.</summary>
internal static class Placeholders
{
    /// <summary>A copy with every placeholder filled for which there is a value.</summary>
    /// <param name="node">What to copy.</param>
    /// <param name="values">The values by name.</param>
    /// <param name="errors">Takes complaints.</param>
    /// <param name="partial">Whether a placeholder without a value is left for later instead of being an error.</param>
    public static DeviceNode Fill(
        DeviceNode node,
        IReadOnlyDictionary<string, DeviceNode> values,
        DeviceModelErrors errors,
        bool partial = false
    )
    {
        switch (node)
        {
            case ScalarNode scalar:
                // A value that is nothing but a placeholder takes whatever stands behind it, a list too.
                if (
                    IsWhole(scalar.Text, out var name)
                    && values.TryGetValue(name, out var whole)
                    && whole is not ScalarNode
                )
                {
                    return whole;
                }

                return FillText(scalar, values, errors, partial);
            case ListNode list:
                return new ListNode(
                    list.File,
                    list.Line,
                    [.. list.Items.Select(item => Fill(item, values, errors, partial))]
                );
            case MapNode map:
                var copy = new MapNode(map.File, map.Line);
                foreach (var (key, value) in map.Entries)
                {
                    copy.Set(FillText(key, values, errors, partial), Fill(value, values, errors, partial));
                }

                return copy;
            default:
                return node;
        }
    }

    private static bool IsWhole(string text, out string name)
    {
        name = text.Length > 2 && text[0] == '{' && text[^1] == '}' ? text[1..^1] : "";
        return name.Length > 0 && !name.Contains('{', StringComparison.Ordinal);
    }

    private static ScalarNode FillText(
        ScalarNode scalar,
        IReadOnlyDictionary<string, DeviceNode> values,
        DeviceModelErrors errors,
        bool partial
    )
    {
        var text = scalar.Text;
        var open = text.IndexOf('{', StringComparison.Ordinal);
        if (open < 0)
        {
            return scalar;
        }

        var filled = new StringBuilder();
        var from = 0;
        while (open >= 0)
        {
            var close = text.IndexOf('}', open);
            if (close < 0)
            {
                errors.Add(scalar, $"'{text}' has a '{{' without its '}}'");
                return scalar;
            }

            filled.Append(text, from, open - from);
            var placeholder = text[(open + 1)..close];
            if (Value(placeholder, values) is { } value)
            {
                filled.Append(value);
            }
            else
            {
                filled.Append(text, open, close + 1 - open);
                if (!partial)
                {
                    errors.Add(scalar, $"nothing fills '{{{placeholder}}}': give it in the instance");
                }
            }

            from = close + 1;
            open = text.IndexOf('{', from);
        }

        filled.Append(text, from, text.Length - from);
        return new ScalarNode(scalar.File, scalar.Line, filled.ToString(), quoted: false);
    }

    private static string? Value(string placeholder, IReadOnlyDictionary<string, DeviceNode> values)
    {
        var name = placeholder.Split(':', '+')[0];
        if (values.TryGetValue(name, out var later) && later is ScalarNode scalar && scalar.Text == $"{{{name}}}")
        {
            // Stands for itself: a later filling knows what it is.
            return $"{{{placeholder}}}";
        }

        if (placeholder.Split(':') is [var padded, var digits])
        {
            return Value(padded, values) is { } text && Numbers.TryParse(digits, out var width)
                ? text.PadLeft((int)Math.Min(width, 64), '0')
                : null;
        }

        return Sum(placeholder, values);
    }

    private static string? Sum(string placeholder, IReadOnlyDictionary<string, DeviceNode> values)
    {
        var plus = placeholder.IndexOf('+', StringComparison.Ordinal);
        var name = plus < 0 ? placeholder : placeholder[..plus];
        if (!values.TryGetValue(name, out var node) || node is not ScalarNode { Text: var text })
        {
            return null;
        }

        if (plus < 0)
        {
            return text;
        }

        return Numbers.TryParse(text, out var number) && Numbers.TryParse(placeholder[(plus + 1)..], out var offset)
            ? (number + offset).ToString(CultureInfo.InvariantCulture)
            : null;
    }
}
