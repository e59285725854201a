namespace PowerLint.Program;

/// <summary>Reads an object of type <see cref="Expression.Type"/> (a whole aggregate included) at an address.</summary>
public sealed class Load(CType type, SourceRange range, Expression address, bool isVolatile, BitField? bitField = null)
    : Expression(type, range)
{
    /// <summary>Where it reads.</summary>
    public Expression Address { get; } = address;

    /// <summary>Whether the access is volatile.</summary>
    public bool IsVolatile { get; } = isVolatile;

    /// <summary>The bit-field read, or null for the whole object.</summary>
    public BitField? BitField { get; } = bitField;
}

/// <summary>
/// Writes an object. Plain when <see cref="Operator"/> is null: the value has the object's type. Compound otherwise: the
/// address is evaluated once, the object read, converted to <see cref="ComputationType"/>, combined with the value, converted
/// back and stored. <c>++</c> and <c>--</c> are compound with a constant 1.
/// </summary>
public sealed class Assignment : Expression
{
    /// <summary>Makes an assignment.</summary>
    /// <exception cref="ArgumentException">A compound assignment has no computation type.</exception>
    public Assignment(
        CType objectType,
        SourceRange range,
        Expression address,
        Expression value,
        bool isVolatile,
        BitField? bitField = null,
        BinaryOperator? @operator = null,
        CType? computationType = null,
        long pointerScaleBytes = 0,
        bool yieldsOldValue = false
    )
        : base(objectType, range)
    {
        if (@operator is not null && computationType is null)
        {
            throw new ArgumentException("A compound assignment needs a computation type.", nameof(computationType));
        }

        Address = address;
        Value = value;
        IsVolatile = isVolatile;
        BitField = bitField;
        Operator = @operator;
        ComputationType = computationType;
        PointerScaleBytes = pointerScaleBytes;
        YieldsOldValue = yieldsOldValue;
    }

    /// <summary>Where it writes.</summary>
    public Expression Address { get; }

    /// <summary>What is assigned, or the right operand of a compound assignment (already promoted).</summary>
    public Expression Value { get; }

    /// <summary>Whether the access is volatile.</summary>
    public bool IsVolatile { get; }

    /// <summary>The bit-field written, or null for the whole object.</summary>
    public BitField? BitField { get; }

    /// <summary>The operator of a compound assignment.</summary>
    public BinaryOperator? Operator { get; }

    /// <summary>The type that a compound assignment computes in.</summary>
    public CType? ComputationType { get; }

    /// <summary>For <c>+=</c> and <c>-=</c> on a pointer: bytes a step; otherwise 0.</summary>
    public long PointerScaleBytes { get; }

    /// <summary>Whether the result is the value before the write (postfix <c>++</c> and <c>--</c>).</summary>
    public bool YieldsOldValue { get; }
}
