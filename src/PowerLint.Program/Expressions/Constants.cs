namespace PowerLint.Program;

/// <summary>An integer constant, or an absolute address where the type is a pointer.</summary>
public sealed class IntegerConstant(CType type, SourceRange range, ulong value) : Expression(type, range)
{
    /// <summary>The value, truncated to the type's width, as an unsigned bit pattern.</summary>
    public ulong Value { get; } = value;
}

/// <summary>A floating-point constant.</summary>
public sealed class FloatingConstant(FloatingType type, SourceRange range, double value) : Expression(type, range)
{
    /// <summary>The value.</summary>
    public double Value { get; } = value;
}

/// <summary>A value that the lowering could not express; anything is possible. The reason was reported as a gap.</summary>
public sealed class UnknownValue(CType type, SourceRange range, string reason, IReadOnlyList<Expression> operands)
    : Expression(type, range)
{
    /// <summary>Why nothing is known.</summary>
    public string Reason { get; } = reason;

    /// <summary>Operands that are evaluated for their effects; pointers among them may have been written through.</summary>
    public IReadOnlyList<Expression> Operands { get; } = operands;
}
