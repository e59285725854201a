using System.Globalization;

namespace PowerLint.OracleTests;

/// <summary>Something that an expression can read.</summary>
/// <param name="Text">The C text.</param>
/// <param name="Type">Its type.</param>
internal sealed record Readable(string Text, IntegerType Type);

/// <summary>Writes random integer expressions without undefined behaviour: ranges are kept, and what could overflow is cast.</summary>
internal sealed class ExpressionGenerator(RandomSource random, bool wide)
{
    /// <summary>An expression over what can be read.</summary>
    public TypedText Generate(IReadOnlyList<Readable> scope, int depth)
    {
        if (depth <= 0 || random.OneIn(5))
        {
            return Leaf(scope);
        }

        switch (random.Below(wide ? 15 : 12))
        {
            case 0 or 1 or 2:
                return Bitwise(Generate(scope, depth - 1), Generate(scope, depth - 1));
            case 3 or 4:
                return Arithmetic(Generate(scope, depth - 1), Generate(scope, depth - 1), random.Pick("+", "-"));
            case 5:
                return Arithmetic(Generate(scope, depth - 1), Generate(scope, depth - 1), "*");
            case 6:
                return ShiftLeft(Generate(scope, depth - 1));
            case 7:
                return ShiftRight(Generate(scope, depth - 1));
            case 8:
                return Divide(Generate(scope, depth - 1));
            case 9:
                return Condition(scope, depth - 1);
            case 10:
                return Not(Generate(scope, depth - 1));
            case 11:
                return Generate(scope, depth - 1).As(random.From(Types));
            case 12:
                return Choice(Condition(scope, depth - 1), Generate(scope, depth - 1), Generate(scope, depth - 1));
            case 13:
                return VariableShift(Generate(scope, depth - 1), Generate(scope, depth - 1));
            default:
                var left = Generate(scope, depth - 1);
                var right = Generate(scope, depth - 1);
                return right with { Text = $"({left.Text}, {right.Text})" };
        }
    }

    /// <summary>A truth value.</summary>
    public TypedText Condition(IReadOnlyList<Readable> scope, int depth)
    {
        var left = Generate(scope, depth - 1);
        var right = Generate(scope, depth - 1);
        return random.Below(6) switch
        {
            0 => Truth($"({left.Text} & {random.Between(1, 255)})"),
            1 => Truth($"({left.Text} && {right.Text})"),
            2 => Truth($"({left.Text} || {right.Text})"),
            3 => Truth($"!{left.Text}"),
            _ => Truth($"({left.Text} {random.Pick("<", "<=", ">", ">=", "==", "!=")} {right.Text})"),
        };

        static TypedText Truth(string text) =>
            text[0] == '(' && text.Contains(" & ", StringComparison.Ordinal)
                ? new TypedText($"({text} != 0)", IntegerType.I16, 0, 1)
                : new TypedText(text[0] == '!' ? $"({text})" : text, IntegerType.I16, 0, 1);
    }

    /// <summary>A constant.</summary>
    public TypedText Constant()
    {
        var value = random.Below(8) switch
        {
            0 => 0,
            1 => 1 << random.Below(8),
            2 => 0xff,
            3 => wide ? random.Between(256, 32767) : random.Between(0, 255),
            4 => wide ? -random.Between(1, 128) : random.Between(0, 15),
            _ => random.Between(0, 255),
        };
        if (wide && random.OneIn(6))
        {
            return random.OneIn(2)
                ? new TypedText(Hex(value & 0xffff) + "U", IntegerType.U16, value & 0xffff, value & 0xffff)
                : new TypedText(Hex(value & 0xffff) + "UL", IntegerType.U32, value & 0xffff, value & 0xffff);
        }

        var text =
            value < 0 ? $"({value.ToString(CultureInfo.InvariantCulture)})"
            : random.OneIn(2) ? Hex(value)
            : value.ToString(CultureInfo.InvariantCulture);
        return new TypedText(text, IntegerType.I16, value, value);
    }

    private IReadOnlyList<IntegerType> Types =>
        wide ? IntegerType.All : [IntegerType.U8, IntegerType.U16, IntegerType.I16];

    private TypedText Leaf(IReadOnlyList<Readable> scope)
    {
        if (scope.Count == 0 || random.OneIn(3))
        {
            return Constant();
        }

        var readable = random.From(scope);
        return TypedText.Any(readable.Text, readable.Type);
    }

    private TypedText Bitwise(TypedText a, TypedText b)
    {
        var type = IntegerType.Common(a.Type, b.Type);
        var operation = random.Pick("&", "|", "^");
        var text = $"({a.Text} {operation} {b.Text})";
        if (a.Low < 0 || b.Low < 0)
        {
            return TypedText.Any(text, type);
        }

        // Without a sign the result has no more bits than the larger operand; "and" none more than the smaller one.
        var (least, most) = (Math.Min(a.High, b.High), Math.Max(a.High, b.High));
        return new TypedText(
            text,
            type,
            0,
            string.Equals(operation, "&", StringComparison.Ordinal) ? least : Ones(most)
        );
    }

    private static TypedText Arithmetic(TypedText a, TypedText b, string operation)
    {
        var type = IntegerType.Common(a.Type, b.Type);
        long[] corners = operation switch
        {
            "+" => [a.Low + b.Low, a.High + b.High],
            "-" => [a.Low - b.High, a.High - b.Low],
            _ => Products(a, b),
        };
        if (!type.IsSigned)
        {
            var fits = type.Holds(corners.Min(), corners.Max()) && a.Low >= 0 && b.Low >= 0;
            var whole = $"({a.Text} {operation} {b.Text})";
            return fits ? new TypedText(whole, type, corners.Min(), corners.Max()) : TypedText.Any(whole, type);
        }

        return type.Holds(corners.Min(), corners.Max())
            ? new TypedText($"({a.Text} {operation} {b.Text})", type, corners.Min(), corners.Max())
            : Arithmetic(a.As(type.Unsigned), b, operation);
    }

    private static long[] Products(TypedText a, TypedText b)
    {
        // 32-bit unsigned ranges do not overflow 64 bits signed by more than their top bit.
        Int128[] corners =
        [
            (Int128)a.Low * b.Low,
            (Int128)a.Low * b.High,
            (Int128)a.High * b.Low,
            (Int128)a.High * b.High,
        ];
        return [.. corners.Select(c => (long)Int128.Clamp(c, long.MinValue, long.MaxValue))];
    }

    private TypedText ShiftLeft(TypedText a)
    {
        var type = a.Type.Promoted;
        var by = random.Below(type.Bits > 16 ? 20 : 9);
        return a.Low >= 0 && type.Holds(0, a.High << by)
            ? new TypedText($"({a.Text} << {by})", type, a.Low << by, a.High << by)
            : TypedText.Any($"({a.As(type.Unsigned).Text} << {by})", type.Unsigned);
    }

    private TypedText ShiftRight(TypedText a)
    {
        var by = random.Below(a.Type.Promoted.Bits > 16 ? 24 : 9);
        return new TypedText($"({a.Text} >> {by})", a.Type.Promoted, a.Low >> by, a.High >> by);
    }

    private TypedText VariableShift(TypedText a, TypedText by)
    {
        var type = a.Type.Promoted.Unsigned;
        return random.OneIn(2)
            ? TypedText.Any($"({a.As(type).Text} << ({by.Text} & 7))", type)
            : TypedText.Any($"({a.As(type).Text} >> ({by.Text} & 7))", type);
    }

    private TypedText Divide(TypedText a)
    {
        // A positive divisor of int's range: neither 0 nor the one overflow that division has.
        var by = random.Between(1, 100);
        var type = a.Type.Promoted;
        return random.OneIn(2)
            ? new TypedText($"({a.Text} / {by})", type, a.Low / by, a.High / by)
            : new TypedText($"({a.Text} % {by})", type, a.Low < 0 ? -by + 1 : 0, by - 1);
    }

    private static TypedText Not(TypedText a)
    {
        var type = a.Type.Promoted;
        return type.IsSigned
            ? new TypedText($"(~{a.Text})", type, -a.High - 1, -a.Low - 1)
            : TypedText.Any($"(~{a.Text})", type);
    }

    private static TypedText Choice(TypedText condition, TypedText a, TypedText b)
    {
        var type = IntegerType.Common(a.Type, b.Type);
        var text = $"({condition.Text} ? {a.Text} : {b.Text})";
        var (low, high) = (Math.Min(a.Low, b.Low), Math.Max(a.High, b.High));
        return type.Holds(low, high) ? new TypedText(text, type, low, high) : TypedText.Any(text, type);
    }

    private static string Hex(int value) => "0x" + value.ToString("x", CultureInfo.InvariantCulture);

    private static long Ones(long most) =>
        most == 0 ? 0 : (1L << (64 - System.Numerics.BitOperations.LeadingZeroCount((ulong)most))) - 1;
}
