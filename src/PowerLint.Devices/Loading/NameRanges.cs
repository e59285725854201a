using System.Globalization;

namespace PowerLint.Devices;

/// <summary>
/// Expands <c>PB0..PB7</c>, <c>DDB7..DDB0</c>, <c>PA00..PA31</c> and <c>ADC5D..ADC0D</c>: the last number of the names counts.
/// </summary>
internal static class NameRanges
{
    public static IEnumerable<string> Expand(IEnumerable<string> names)
    {
        foreach (var name in names)
        {
            var dots = name.IndexOf("..", StringComparison.Ordinal);
            if (
                dots < 0
                || Split(name[..dots]) is not { } first
                || Split(name[(dots + 2)..]) is not { } last
                || !string.Equals(first.Stem, last.Stem, StringComparison.Ordinal)
                || !string.Equals(first.Tail, last.Tail, StringComparison.Ordinal)
            )
            {
                yield return name;
                continue;
            }

            var step = first.Number <= last.Number ? 1 : -1;

            // PA00 to PA31 keep their zeros; PB0 to PB10 have none to keep.
            var digits = Math.Min(first.Digits, last.Digits);
            for (var i = first.Number; i != last.Number + step; i += step)
            {
                yield return first.Stem + i.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0') + first.Tail;
            }
        }
    }

    private static (string Stem, int Number, int Digits, string Tail)? Split(string name)
    {
        var end = name.Length;
        while (end > 0 && !char.IsAsciiDigit(name[end - 1]))
        {
            end--;
        }

        var start = end;
        while (start > 0 && char.IsAsciiDigit(name[start - 1]))
        {
            start--;
        }

        return int.TryParse(
            name.AsSpan(start, end - start),
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var number
        )
            ? (name[..start], number, end - start, name[end..])
            : null;
    }
}
