namespace PowerLint.Program;

/// <summary>The address of a variable.</summary>
public sealed class AddressOfVariable(CType type, SourceRange range, Variable variable) : Expression(type, range)
{
    /// <summary>The variable.</summary>
    public Variable Variable { get; } = variable;
}

/// <summary>The address of a function; the callee of a direct call.</summary>
public sealed class AddressOfFunction(CType type, SourceRange range, FunctionSymbol function) : Expression(type, range)
{
    /// <summary>The function's name as this unit sees it; <see cref="Image.Resolve(FunctionSymbol)"/> finds the body.</summary>
    public FunctionSymbol Function { get; } = function;
}

/// <summary>The address of a label (<c>&amp;&amp;label</c>), for computed jumps.</summary>
public sealed class AddressOfLabel(CType type, SourceRange range, string label) : Expression(type, range)
{
    /// <summary>The label's name.</summary>
    public string Label { get; } = label;
}

/// <summary>A pointer moved by <c>index × scale</c> bytes; members are a constant index with scale 1.</summary>
public sealed class PointerOffset(CType type, SourceRange range, Expression pointer, Expression index, long scaleBytes)
    : Expression(type, range)
{
    /// <summary>The pointer that is moved.</summary>
    public Expression Pointer { get; } = pointer;

    /// <summary>The signed or unsigned integer index.</summary>
    public Expression Index { get; } = index;

    /// <summary>Bytes an index step; negative for subtraction.</summary>
    public long ScaleBytes { get; } = scaleBytes;
}

/// <summary>The difference of two pointers, in elements.</summary>
public sealed class PointerDifference(CType type, SourceRange range, Expression left, Expression right, long scaleBytes)
    : Expression(type, range)
{
    /// <summary>The pointer subtracted from.</summary>
    public Expression Left { get; } = left;

    /// <summary>The pointer subtracted.</summary>
    public Expression Right { get; } = right;

    /// <summary>Element size in bytes.</summary>
    public long ScaleBytes { get; } = scaleBytes;
}

/// <summary>
/// An unnamed object of the enclosing block (compound literal): initialises <see cref="Variable"/>, then yields its address.
/// </summary>
public sealed class InitializedTemporary(CType type, SourceRange range, LocalVariable variable, Initializer initializer)
    : Expression(type, range)
{
    /// <summary>The unnamed variable.</summary>
    public LocalVariable Variable { get; } = variable;

    /// <summary>Its initial value.</summary>
    public Initializer Initializer { get; } = initializer;
}
