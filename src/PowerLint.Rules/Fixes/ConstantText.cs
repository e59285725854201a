using System.Globalization;

namespace PowerLint.Rules;

/// <summary>Evaluates an integer constant expression of C as a header writes it: numbers, names, casts left out.</summary>
/// <param name="text">The expression.</param>
/// <param name="lookUp">The value of a name, or null where it has none.</param>
internal sealed class ConstantText(string text, Func<string, ulong?> lookUp)
{
    // Headers write sums of a few terms; what nests deeper is no register constant.
    private const int MostLength = 200;

    private int _at;

    /// <summary>The value, or null where the text is no such expression.</summary>
    public static ulong? Evaluate(string text, Func<string, ulong?> lookUp)
    {
        if (text.Length is 0 or > MostLength)
        {
            return null;
        }

        var parser = new ConstantText(text, lookUp);
        var value = parser.Or();
        parser.SkipSpace();
        return parser._at == text.Length ? value : null;
    }

    private ulong? Or() => Binary(And, ("|", (a, b) => a | b));

    private ulong? And() => Binary(Shift, ("&", (a, b) => a & b));

    private ulong? Shift() =>
        Binary(Sum, ("<<", (a, b) => b < 64 ? a << (int)b : 0), (">>", (a, b) => b < 64 ? a >> (int)b : 0));

    private ulong? Sum() => Binary(Product, ("+", (a, b) => a + b), ("-", (a, b) => a - b));

    private ulong? Product() => Binary(Unary, ("*", (a, b) => a * b));

    private ulong? Binary(
        Func<ulong?> operand,
        params ReadOnlySpan<(string Sign, Func<ulong, ulong, ulong> Apply)> operators
    )
    {
        var left = operand();
        while (left is { } value)
        {
            Func<ulong, ulong, ulong>? apply = null;
            foreach (var (sign, candidate) in operators)
            {
                if (Take(sign))
                {
                    apply = candidate;
                    break;
                }
            }

            if (apply is null)
            {
                return value;
            }

            left = operand() is { } right ? apply(value, right) : null;
        }

        return null;
    }

    private ulong? Unary()
    {
        SkipSpace();
        if (_at >= text.Length)
        {
            return null;
        }

        if (Take("~"))
        {
            return Unary() is { } value ? ~value : null;
        }

        if (Take("("))
        {
            var inner = Or();
            return Take(")") ? inner : null;
        }

        return char.IsAsciiDigit(text[_at]) ? Number()
            : char.IsAsciiLetter(text[_at]) || text[_at] == '_' ? lookUp(Word())
            : null;
    }

    private ulong? Number()
    {
        var word = Word().TrimEnd('u', 'U', 'l', 'L');
        var isHex = word.StartsWith("0x", StringComparison.OrdinalIgnoreCase);
        var isBinary = word.StartsWith("0b", StringComparison.OrdinalIgnoreCase);
        return ulong.TryParse(
            isHex || isBinary ? word[2..] : word,
            isHex ? NumberStyles.AllowHexSpecifier
                : isBinary ? NumberStyles.AllowBinarySpecifier
                : NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var value
        )
            ? value
            : null;
    }

    private string Word()
    {
        var start = _at;
        while (_at < text.Length && (char.IsAsciiLetterOrDigit(text[_at]) || text[_at] == '_'))
        {
            _at++;
        }

        return text[start.._at];
    }

    private bool Take(string sign)
    {
        SkipSpace();
        if (string.CompareOrdinal(text, _at, sign, 0, sign.Length) != 0)
        {
            return false;
        }

        _at += sign.Length;
        return true;
    }

    private void SkipSpace()
    {
        while (_at < text.Length && char.IsWhiteSpace(text[_at]))
        {
            _at++;
        }
    }
}
