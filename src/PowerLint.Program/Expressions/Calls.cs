namespace PowerLint.Program;

/// <summary>
/// A call. Library functions and compiler intrinsics are calls by name, too. Arguments are converted to the parameters' types.
/// </summary>
public sealed class Call(CType type, SourceRange range, Expression callee, IReadOnlyList<Expression> arguments)
    : Expression(type, range)
{
    /// <summary>An <see cref="AddressOfFunction"/> for a direct call, else any pointer.</summary>
    public Expression Callee { get; } = callee;

    /// <summary>The arguments in order; aggregates are passed as loads of aggregate type.</summary>
    public IReadOnlyList<Expression> Arguments { get; } = arguments;
}

/// <summary>A GNU statement expression: runs the block, then yields <see cref="Result"/> (null where it has no value).</summary>
public sealed class StatementExpression(CType type, SourceRange range, Block body, Expression? result)
    : Expression(type, range)
{
    /// <summary>The statements before the last one.</summary>
    public Block Body { get; } = body;

    /// <summary>The value of the last statement.</summary>
    public Expression? Result { get; } = result;
}
