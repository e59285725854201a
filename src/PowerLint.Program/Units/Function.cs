namespace PowerLint.Program;

/// <summary>A function as one unit names it. Compares by identity; a unit has one for each function it mentions.</summary>
public sealed class FunctionSymbol(string name, bool isStatic)
{
    /// <summary>The name.</summary>
    public string Name { get; } = name;

    /// <summary>Whether the name is the unit's own.</summary>
    public bool IsStatic { get; } = isStatic;

    /// <summary>Whether the declaration says that it does not return.</summary>
    public bool IsNoReturn { get; init; }

    /// <summary>The body that this unit gives it; null where it only declares it.</summary>
    public Function? Definition { get; set; }

    /// <inheritdoc/>
    public override string ToString() => Name;
}

/// <summary>A function with a body.</summary>
public sealed class Function(
    FunctionSymbol symbol,
    CType returnType,
    IReadOnlyList<LocalVariable> parameters,
    bool isVariadic,
    Block body,
    SourceRange range
)
{
    /// <summary>The symbol it defines.</summary>
    public FunctionSymbol Symbol { get; } = symbol;

    /// <summary>The name.</summary>
    public string Name => Symbol.Name;

    /// <summary>The name that people know it by: a handler that a macro defines goes by its vector as written.</summary>
    public string DisplayName => Handler?.SpelledVector ?? Name;

    /// <summary>What it returns.</summary>
    public CType ReturnType { get; } = returnType;

    /// <summary>Its parameters.</summary>
    public IReadOnlyList<LocalVariable> Parameters { get; } = parameters;

    /// <summary>Whether more arguments may follow.</summary>
    public bool IsVariadic { get; } = isVariadic;

    /// <summary>The body.</summary>
    public Block Body { get; } = body;

    /// <summary>The whole definition; starts at the macro that defines a handler where there is one.</summary>
    public SourceRange Range { get; } = range;

    /// <summary>Whether a strong definition elsewhere wins.</summary>
    public bool IsWeak { get; init; }

    /// <summary>Whether start-up code runs it before <c>main</c>: a constructor, or a section such as <c>.init3</c>.</summary>
    public string? StartupSection { get; init; }

    /// <summary>Whether it has no prologue and epilogue of its own.</summary>
    public bool IsNaked { get; init; }

    /// <summary>The interrupt that it handles, or null.</summary>
    public InterruptHandler? Handler { get; init; }

    /// <inheritdoc/>
    public override string ToString() => Name;
}

/// <summary>What a function says of the interrupt that it handles.</summary>
/// <param name="LinkName">The symbol or vector that the linker or compiler goes by: <c>__vector_6</c>, <c>TIM2_IRQHandler</c>, <c>PORT1_VECTOR</c>.</param>
/// <param name="SpelledVector">The vector as written in the source where a macro defines the handler: <c>WDT_vect</c>; else the link name.</param>
/// <param name="VectorNumber">The number that the link name or attribute gives, or null.</param>
/// <param name="EnablesInterruptsAtEntry">Whether the handler itself can be interrupted from its first instruction.</param>
public sealed record InterruptHandler(
    string LinkName,
    string SpelledVector,
    int? VectorNumber,
    bool EnablesInterruptsAtEntry
);
