using System.Globalization;
using System.Text;

namespace PowerLint.Frontend;

/// <summary>The contents of string literals, which libclang hands out in quotes and escaped.</summary>
internal static class StringLiteral
{
    /// <summary>The bytes of a literal, cut or filled with zeros to a number of elements.</summary>
    public static byte[] Bytes(string spelling, int elementBytes, int elements)
    {
        var units = Units(spelling, elementBytes);
        var bytes = new byte[Math.Max(0, elements) * elementBytes];
        for (var i = 0; i < Math.Min(units.Count, elements); i++)
        {
            for (var b = 0; b < elementBytes; b++)
            {
                bytes[(i * elementBytes) + b] = (byte)(units[i] >> (8 * b));
            }
        }

        return bytes;
    }

    private static List<uint> Units(string spelling, int elementBytes)
    {
        var units = new List<uint>();
        Span<byte> utf8 = stackalloc byte[4];
        var i = spelling.IndexOf('"', StringComparison.Ordinal) + 1;
        while (i < spelling.Length && !(spelling[i] == '"' && i == spelling.Length - 1))
        {
            if (spelling[i] == '\\' && i + 1 < spelling.Length)
            {
                units.Add(Escape(spelling, ref i));
                continue;
            }

            if (elementBytes == 1)
            {
                var rune = Rune.GetRuneAt(spelling, i);
                var length = rune.EncodeToUtf8(utf8);
                foreach (var value in utf8[..length])
                {
                    units.Add(value);
                }

                i += rune.Utf16SequenceLength;
            }
            else
            {
                units.Add(spelling[i++]);
            }
        }

        return units;
    }

    private static uint Escape(string text, ref int i)
    {
        var kind = text[i + 1];
        i += 2;
        switch (kind)
        {
            case 'n':
                return '\n';
            case 't':
                return '\t';
            case 'r':
                return '\r';
            case 'a':
                return 7;
            case 'b':
                return 8;
            case 'f':
                return 12;
            case 'v':
                return 11;
            case 'x' or 'u' or 'U':
                var start = i;
                var limit = kind switch
                {
                    'u' => 4,
                    'U' => 8,
                    _ => int.MaxValue,
                };
                while (i < text.Length && i - start < limit && char.IsAsciiHexDigit(text[i]))
                {
                    i++;
                }

                return uint.TryParse(
                    text.AsSpan(start, i - start),
                    NumberStyles.AllowHexSpecifier,
                    CultureInfo.InvariantCulture,
                    out var hex
                )
                    ? hex
                    : 0;
            case >= '0' and <= '7':
                uint octal = (uint)(kind - '0');
                for (var digits = 1; digits < 3 && i < text.Length && text[i] is >= '0' and <= '7'; digits++)
                {
                    octal = (octal * 8) + (uint)(text[i++] - '0');
                }

                return octal;
            default:
                return kind;
        }
    }
}
