using System.Globalization;

namespace PowerLint.Devices;

/// <summary>
/// Numbers as CMSIS-SVD writes them (its type scaledNonNegativeInteger): decimal, <c>0x…</c>, binary after <c>#</c> or
/// <c>0b</c>, each perhaps followed by K, M, G or T.
/// </summary>
internal static class SvdNumber
{
    // A value with more free bits than this is not worth a name a value.
    private const int MostFreeBits = 8;

    public static bool TryParse(string text, out ulong number)
    {
        number = 0;
        var digits = text.StartsWith('+') ? text[1..] : text;
        var shift = 0;
        if (digits.Length > 1 && "kKmMgGtT".IndexOf(digits[^1], StringComparison.Ordinal) is var unit and >= 0)
        {
            shift = 10 * (1 + (unit / 2));
            digits = digits[..^1];
        }

        var read =
            digits.StartsWith("0x", StringComparison.OrdinalIgnoreCase)
                ? ulong.TryParse(
                    digits.AsSpan(2),
                    NumberStyles.AllowHexSpecifier,
                    CultureInfo.InvariantCulture,
                    out number
                )
            : Binary(digits) is { } binary
                ? ulong.TryParse(binary, NumberStyles.AllowBinarySpecifier, CultureInfo.InvariantCulture, out number)
            : ulong.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out number);
        if (!read || (shift > 0 && number >> (64 - shift) != 0))
        {
            return false;
        }

        number <<= shift;
        return true;
    }

    /// <summary>The values that an enumerated value stands for: <c>#1xx</c> is four of them. None where it is no value.</summary>
    public static bool TryParseValues(string text, out ulong[] values)
    {
        values = [];
        if (Binary(text) is not { } digits || !digits.Contains('x', StringComparison.OrdinalIgnoreCase))
        {
            if (!TryParse(text, out var one))
            {
                return false;
            }

            values = [one];
            return true;
        }

        if (digits.Length is 0 or > 64 || digits.Any(digit => digit is not ('0' or '1' or 'x' or 'X')))
        {
            return false;
        }

        var free = digits.Count(digit => digit is 'x' or 'X');
        if (free > MostFreeBits)
        {
            return true;
        }

        values = new ulong[1 << free];
        for (var choice = 0; choice < values.Length; choice++)
        {
            var left = choice;
            for (var i = 0; i < digits.Length; i++)
            {
                var place = digits.Length - 1 - i;
                ulong bit;
                if (digits[place] is 'x' or 'X')
                {
                    bit = (ulong)left & 1;
                    left >>= 1;
                }
                else
                {
                    bit = digits[place] == '1' ? 1u : 0;
                }

                values[choice] |= bit << i;
            }
        }

        return true;
    }

    private static string? Binary(string text) =>
        text.StartsWith('#') ? text[1..]
        : text.StartsWith("0b", StringComparison.OrdinalIgnoreCase) ? text[2..]
        : null;
}
