using System.Globalization;

namespace PowerLint.OracleTests;

/// <summary>
/// An expectation in the source of a sleep point: <c>// state: PORTB = 0b??01_1111, MCUCR.SE = 1</c> at the end of its line.
/// A bit written <c>?</c> is left open.
/// </summary>
/// <param name="Place">The line.</param>
/// <param name="Name">A register, or <c>REGISTER.FIELD</c>.</param>
/// <param name="Known">Bits that the mark gives.</param>
/// <param name="Value">Their values.</param>
internal sealed record StateMark(SourceLine Place, string Name, ulong Known, ulong Value)
{
    private const string Key = "// state:";

    /// <summary>The marks of a file, in order.</summary>
    public static IEnumerable<StateMark> In(string file)
    {
        var number = 0;
        foreach (var line in File.ReadLines(file))
        {
            number++;
            var at = line.IndexOf(Key, StringComparison.Ordinal);
            if (at < 0)
            {
                continue;
            }

            foreach (var part in line[(at + Key.Length)..].Split(','))
            {
                var sides = part.Split('=', StringSplitOptions.TrimEntries);
                if (sides.Length != 2)
                {
                    throw new FormatException($"{file}:{number}: '{part.Trim()}' is not NAME = BITS.");
                }

                var (known, value) = ParseBits(sides[1], $"{file}:{number}");
                yield return new StateMark(new SourceLine(file, number), sides[0], known, value);
            }
        }
    }

    private static (ulong Known, ulong Value) ParseBits(string text, string place)
    {
        var digits = text.Replace("_", "", StringComparison.Ordinal);
        if (digits.StartsWith("0b", StringComparison.Ordinal))
        {
            var known = ~0UL << (digits.Length - 2);
            var value = 0UL;
            for (var index = 2; index < digits.Length; index++)
            {
                var bit = 1UL << (digits.Length - 1 - index);
                known |= digits[index] == '?' ? 0 : bit;
                value |= digits[index] == '1' ? bit : 0;
            }

            return (known, value);
        }

        var isHex = digits.StartsWith("0x", StringComparison.Ordinal);
        return ulong.TryParse(
            isHex ? digits[2..] : digits,
            isHex ? NumberStyles.HexNumber : NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var whole
        )
            ? (~0UL, whole)
            : throw new FormatException($"{place}: '{text}' is not a number.");
    }
}
