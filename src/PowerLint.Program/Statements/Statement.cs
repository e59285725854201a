namespace PowerLint.Program;

/// <summary>A structured statement. Nodes compare by identity.</summary>
/// <param name="range">Where it stands.</param>
public abstract class Statement(SourceRange range)
{
    /// <summary>Where the statement stands in the source.</summary>
    public SourceRange Range { get; } = range;
}

/// <summary>Statements one after the other.</summary>
public sealed class Block(SourceRange range, IReadOnlyList<Statement> statements) : Statement(range)
{
    /// <summary>The statements.</summary>
    public IReadOnlyList<Statement> Statements { get; } = statements;
}

/// <summary>An expression evaluated for its effects.</summary>
public sealed class ExpressionStatement(SourceRange range, Expression expression) : Statement(range)
{
    /// <summary>The expression.</summary>
    public Expression Expression { get; } = expression;
}

/// <summary>The point where a local variable begins: its old value is gone; it is initialised where the source says so.</summary>
public sealed class LocalDeclaration(SourceRange range, LocalVariable variable, Initializer? initializer)
    : Statement(range)
{
    /// <summary>The variable.</summary>
    public LocalVariable Variable { get; } = variable;

    /// <summary>Its initial value, or null.</summary>
    public Initializer? Initializer { get; } = initializer;

    /// <summary>
    /// A function to call with the variable's address when its scope is left in any way (the GNU <c>cleanup</c> attribute),
    /// or null. The scope is the innermost <see cref="Block"/> or <see cref="Loop"/> that holds the declaration.
    /// </summary>
    public FunctionSymbol? Cleanup { get; init; }
}

/// <summary>A two-way branch.</summary>
public sealed class If(SourceRange range, Expression condition, Statement then, Statement? @else) : Statement(range)
{
    /// <summary>The condition, any scalar.</summary>
    public Expression Condition { get; } = condition;

    /// <summary>Runs where the condition is not zero.</summary>
    public Statement Then { get; } = then;

    /// <summary>Runs where it is zero.</summary>
    public Statement? Else { get; } = @else;
}

/// <summary>
/// A loop: <c>while</c> and <c>for</c> test before the body, <c>do</c> after it. The initialisation of a <c>for</c> stands
/// before the loop, in a block of its own.
/// </summary>
public sealed class Loop(
    SourceRange range,
    Expression? condition,
    Expression? step,
    Statement body,
    bool testsAfterBody
) : Statement(range)
{
    /// <summary>The condition, or null where it is left out (always true).</summary>
    public Expression? Condition { get; } = condition;

    /// <summary>Evaluated after the body and after <c>continue</c>, or null.</summary>
    public Expression? Step { get; } = step;

    /// <summary>The body.</summary>
    public Statement Body { get; } = body;

    /// <summary>True for <c>do … while</c>.</summary>
    public bool TestsAfterBody { get; } = testsAfterBody;
}

/// <summary>A switch; its <see cref="CaseLabel"/>s stand anywhere in the body but not in a nested switch.</summary>
public sealed class Switch(SourceRange range, Expression value, Statement body) : Statement(range)
{
    /// <summary>The promoted controlling value.</summary>
    public Expression Value { get; } = value;

    /// <summary>The body.</summary>
    public Statement Body { get; } = body;
}

/// <summary>A <c>case</c> or <c>default</c> label and the statement it stands before.</summary>
public sealed class CaseLabel(SourceRange range, ulong? low, ulong? high, Statement labelled) : Statement(range)
{
    /// <summary>The lowest value as a bit pattern of the controlling type; null for <c>default</c>.</summary>
    public ulong? Low { get; } = low;

    /// <summary>The highest value of a GNU range; equal to <see cref="Low"/> otherwise.</summary>
    public ulong? High { get; } = high;

    /// <summary>The labelled statement.</summary>
    public Statement Labelled { get; } = labelled;
}

/// <summary>A label and the statement it stands before.</summary>
public sealed class Label(SourceRange range, string name, Statement labelled) : Statement(range)
{
    /// <summary>The label's name, unique in its function.</summary>
    public string Name { get; } = name;

    /// <summary>The labelled statement.</summary>
    public Statement Labelled { get; } = labelled;
}

/// <summary>A jump to a label.</summary>
public sealed class Goto(SourceRange range, string label) : Statement(range)
{
    /// <summary>The label's name.</summary>
    public string Label { get; } = label;
}

/// <summary>A jump to an address taken with <c>&amp;&amp;label</c>.</summary>
public sealed class ComputedGoto(SourceRange range, Expression target) : Statement(range)
{
    /// <summary>The label's address.</summary>
    public Expression Target { get; } = target;
}

/// <summary>Leaves the innermost loop or switch.</summary>
public sealed class Break(SourceRange range) : Statement(range);

/// <summary>Goes on with the next pass of the innermost loop.</summary>
public sealed class Continue(SourceRange range) : Statement(range);

/// <summary>Leaves the function.</summary>
public sealed class Return(SourceRange range, Expression? value) : Statement(range)
{
    /// <summary>The value, converted to the function's type; null where there is none.</summary>
    public Expression? Value { get; } = value;
}

/// <summary>Something that the lowering could not express: any effect on memory is possible. It was reported as a gap.</summary>
public sealed class UnknownEffect(SourceRange range, string reason) : Statement(range)
{
    /// <summary>What it was.</summary>
    public string Reason { get; } = reason;
}
