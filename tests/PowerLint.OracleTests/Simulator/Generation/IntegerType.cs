namespace PowerLint.OracleTests;

/// <summary>An integer type of the target: AVR, <c>int</c> of 16 bits.</summary>
/// <param name="Name">As C writes it.</param>
/// <param name="Bits">Its width.</param>
/// <param name="IsSigned">Whether it is signed.</param>
internal sealed record IntegerType(string Name, int Bits, bool IsSigned)
{
    public static readonly IntegerType U8 = new("uint8_t", 8, false);
    public static readonly IntegerType I8 = new("int8_t", 8, true);
    public static readonly IntegerType U16 = new("uint16_t", 16, false);
    public static readonly IntegerType I16 = new("int16_t", 16, true);
    public static readonly IntegerType U32 = new("uint32_t", 32, false);
    public static readonly IntegerType I32 = new("int32_t", 32, true);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<IntegerType> All { get; } = [U8, I8, U16, I16, U32, I32];

    /// <summary>The smallest value.</summary>
    public long Low => IsSigned ? -(1L << (Bits - 1)) : 0;

    /// <summary>The largest value.</summary>
    public long High => IsSigned ? (1L << (Bits - 1)) - 1 : (1L << Bits) - 1;

    /// <summary>The type after the integer promotions.</summary>
    public IntegerType Promoted => Bits < 16 ? I16 : this;

    /// <summary>The common type of the usual arithmetic conversions.</summary>
    public static IntegerType Common(IntegerType a, IntegerType b)
    {
        var (left, right) = (a.Promoted, b.Promoted);
        if (left.Bits != right.Bits)
        {
            return left.Bits > right.Bits ? left : right;
        }

        return left.IsSigned ? right : left;
    }

    /// <summary>Whether a range fits.</summary>
    public bool Holds(long low, long high) => low >= Low && high <= High;

    /// <summary>The unsigned type of the same width.</summary>
    public IntegerType Unsigned =>
        Bits switch
        {
            8 => U8,
            16 => U16,
            _ => U32,
        };
}

/// <summary>An expression with what is known of its value, so that no operation on it is undefined.</summary>
/// <param name="Text">The C text, safe to put beside any operator.</param>
/// <param name="Type">Its type.</param>
/// <param name="Low">It is never less.</param>
/// <param name="High">It is never more.</param>
internal sealed record TypedText(string Text, IntegerType Type, long Low, long High)
{
    /// <summary>Any value of a type.</summary>
    public static TypedText Any(string text, IntegerType type) => new(text, type, type.Low, type.High);

    /// <summary>Cast.</summary>
    public TypedText As(IntegerType type) =>
        type.Holds(Low, High)
            ? new TypedText($"({type.Name}){Text}", type, Low, High)
            : Any($"({type.Name}){Text}", type);
}
