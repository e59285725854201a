using System.Globalization;

namespace PowerLint.Devices;

/// <summary>Numbers as device files write them: decimal, <c>0x…</c>, <c>0b…</c>.</summary>
internal static class Numbers
{
    public static bool TryParse(string text, out ulong number)
    {
        if (text.StartsWith("0x", StringComparison.OrdinalIgnoreCase))
        {
            return ulong.TryParse(
                text.AsSpan(2),
                NumberStyles.AllowHexSpecifier,
                CultureInfo.InvariantCulture,
                out number
            );
        }

        if (text.StartsWith("0b", StringComparison.OrdinalIgnoreCase))
        {
            return ulong.TryParse(
                text.AsSpan(2),
                NumberStyles.AllowBinarySpecifier,
                CultureInfo.InvariantCulture,
                out number
            );
        }

        return ulong.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number);
    }

    public static bool TryParseReal(string text, out double number) =>
        double.TryParse(
            text,
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out number
        );

    /// <summary>A number, or a range <c>1..7</c>.</summary>
    public static bool TryParseRange(string text, out ulong first, out ulong last)
    {
        var dots = text.IndexOf("..", StringComparison.Ordinal);
        if (dots < 0)
        {
            var one = TryParse(text, out first);
            last = first;
            return one;
        }

        last = 0;
        return TryParse(text[..dots], out first) && TryParse(text[(dots + 2)..], out last);
    }
}
