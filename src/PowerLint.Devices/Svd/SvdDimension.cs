using System.Globalization;

namespace PowerLint.Devices;

/// <summary>One of the elements that a description with <c>dim</c> stands for.</summary>
/// <param name="Name">Its name, the index filled in.</param>
/// <param name="Offset">How far it lies from the first one: bytes, or bits for a field.</param>
internal readonly record struct SvdItem(string Name, ulong Offset);

/// <summary>Expands <c>dim</c>, <c>dimIncrement</c> and <c>dimIndex</c>: a list <c>CC%s</c> to CC0, CC1, …, an array <c>CH[%s]</c> to CH[0], CH[1], …</summary>
internal static class SvdDimension
{
    private const ulong MostElements = 1 << 16;

    /// <summary>The elements; one, with offset 0, where the description has no dimension.</summary>
    public static IReadOnlyList<SvdItem> Expand(SvdNode node, string name, SvdReading reading)
    {
        // What was derived from an array under a plain name is one element.
        var isList = name.Contains("%s", StringComparison.Ordinal);
        if (node.Child("dim") is not { } dim || !isList)
        {
            if (isList)
            {
                reading.Error(node.Line, $"'{name}' has a %s for an index, but no 'dim'");
            }
            else if (node.Element.Element("dim") is { } own)
            {
                reading.Error(SvdNode.LineOf(own), $"'{name}' has a 'dim', but no %s in its name for the index");
            }

            return [new SvdItem(Filled(name, "0"), 0)];
        }

        var line = SvdNode.LineOf(dim);
        if (!SvdNumber.TryParse(dim.Value.Trim(), out var count) || count is 0 or > MostElements)
        {
            reading.Error(line, $"the 'dim' of '{name}' must be a number from 1 to {MostElements}");
            return [];
        }

        var increment = reading.Number(node, "dimIncrement", $"'{name}', which has a 'dim',") ?? 0;
        if (Indices(node.Text("dimIndex"), (int)count) is not { } indices)
        {
            reading.Error(
                line,
                $"the 'dimIndex' of '{name}' must give {count} indices: 0-3, A-D, or a list such as 0,1,2"
            );
            return [];
        }

        return [.. indices.Select((index, i) => new SvdItem(Filled(name, index), (ulong)i * increment))];
    }

    /// <summary>The name without its index: <c>CH</c> for <c>CH[%s]</c> and <c>CH%s</c>.</summary>
    public static string Stem(string name) => Filled(name.Replace("[%s]", "", StringComparison.Ordinal), "");

    private static string Filled(string name, string index) => name.Replace("%s", index, StringComparison.Ordinal);

    private static string[]? Indices(string? text, int count)
    {
        if (string.IsNullOrEmpty(text))
        {
            return [.. Enumerable.Range(0, count).Select(i => i.ToString(CultureInfo.InvariantCulture))];
        }

        string[] indices;
        var dash = text.IndexOf('-', StringComparison.Ordinal);
        if (text.Contains(',', StringComparison.Ordinal) || dash < 0)
        {
            indices = text.Split(',', StringSplitOptions.TrimEntries);
        }
        else if (Ordinal(text[..dash], out var first) && Ordinal(text[(dash + 1)..], out var last) && last >= first)
        {
            var isLetter = char.IsAsciiLetter(text[0]);
            indices =
            [
                .. Enumerable
                    .Range(first, Math.Min(last - first + 1, count + 1))
                    .Select(i => isLetter ? ((char)i).ToString() : i.ToString(CultureInfo.InvariantCulture)),
            ];
        }
        else
        {
            return null;
        }

        return indices.Length == count && !indices.Contains("", StringComparer.Ordinal) ? indices : null;
    }

    private static bool Ordinal(string text, out int number)
    {
        text = text.Trim();
        if (text.Length == 1 && char.IsAsciiLetter(text[0]))
        {
            number = text[0];
            return true;
        }

        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number);
    }
}
