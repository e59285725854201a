namespace PowerLint.Program;

/// <summary>Operators with one operand.</summary>
public enum UnaryOperator
{
    /// <summary><c>-x</c>.</summary>
    Negate,

    /// <summary><c>~x</c>.</summary>
    Complement,

    /// <summary><c>!x</c>, an int 0 or 1.</summary>
    LogicalNot,
}

/// <summary>Operators with two operands of one type (shifts: the left operand's type; comparisons yield an int).</summary>
public enum BinaryOperator
{
    /// <summary><c>+</c>.</summary>
    Add,

    /// <summary><c>-</c>.</summary>
    Subtract,

    /// <summary><c>*</c>.</summary>
    Multiply,

    /// <summary><c>/</c>.</summary>
    Divide,

    /// <summary><c>%</c>.</summary>
    Remainder,

    /// <summary><c>&lt;&lt;</c>.</summary>
    ShiftLeft,

    /// <summary><c>&gt;&gt;</c>; arithmetic on signed types.</summary>
    ShiftRight,

    /// <summary><c>&amp;</c>.</summary>
    And,

    /// <summary><c>|</c>.</summary>
    Or,

    /// <summary><c>^</c>.</summary>
    Xor,

    /// <summary><c>==</c>.</summary>
    Equal,

    /// <summary><c>!=</c>.</summary>
    NotEqual,

    /// <summary><c>&lt;</c>.</summary>
    Less,

    /// <summary><c>&lt;=</c>.</summary>
    LessOrEqual,

    /// <summary><c>&gt;</c>.</summary>
    Greater,

    /// <summary><c>&gt;=</c>.</summary>
    GreaterOrEqual,
}

/// <summary>An operation on one operand.</summary>
public sealed class UnaryOperation(CType type, SourceRange range, UnaryOperator @operator, Expression operand)
    : Expression(type, range)
{
    /// <summary>The operator.</summary>
    public UnaryOperator Operator { get; } = @operator;

    /// <summary>The operand.</summary>
    public Expression Operand { get; } = operand;
}

/// <summary>An operation on two operands, both evaluated.</summary>
public sealed class BinaryOperation(
    CType type,
    SourceRange range,
    BinaryOperator @operator,
    Expression left,
    Expression right
) : Expression(type, range)
{
    /// <summary>The operator; comparisons look at the operands' type for signedness.</summary>
    public BinaryOperator Operator { get; } = @operator;

    /// <summary>The left operand.</summary>
    public Expression Left { get; } = left;

    /// <summary>The right operand.</summary>
    public Expression Right { get; } = right;
}

/// <summary>A conversion between integers, floating-point numbers and pointers, explicit or implicit.</summary>
public sealed class Conversion(CType type, SourceRange range, Expression operand) : Expression(type, range)
{
    /// <summary>The operand.</summary>
    public Expression Operand { get; } = operand;
}

/// <summary><c>a &amp;&amp; b</c> or <c>a || b</c>: the right side is evaluated only where the left does not decide.</summary>
public sealed class LogicalOperation(CType type, SourceRange range, bool isAnd, Expression left, Expression right)
    : Expression(type, range)
{
    /// <summary>True for <c>&amp;&amp;</c>, false for <c>||</c>.</summary>
    public bool IsAnd { get; } = isAnd;

    /// <summary>The left side.</summary>
    public Expression Left { get; } = left;

    /// <summary>The right side.</summary>
    public Expression Right { get; } = right;
}

/// <summary><c>c ? a : b</c>. GNU's <c>a ?: b</c> is lowered with <see cref="WhenTrue"/> null: the condition's own value.</summary>
public sealed class Conditional(
    CType type,
    SourceRange range,
    Expression condition,
    Expression? whenTrue,
    Expression whenFalse
) : Expression(type, range)
{
    /// <summary>The condition, any scalar.</summary>
    public Expression Condition { get; } = condition;

    /// <summary>The value where the condition is not zero; null for the condition's own value.</summary>
    public Expression? WhenTrue { get; } = whenTrue;

    /// <summary>The value where the condition is zero.</summary>
    public Expression WhenFalse { get; } = whenFalse;
}

/// <summary><c>a, b</c>.</summary>
public sealed class Sequence(CType type, SourceRange range, Expression first, Expression second)
    : Expression(type, range)
{
    /// <summary>Evaluated for its effects.</summary>
    public Expression First { get; } = first;

    /// <summary>The result.</summary>
    public Expression Second { get; } = second;
}
