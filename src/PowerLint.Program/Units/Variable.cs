namespace PowerLint.Program;

/// <summary>A variable. Variables compare by identity.</summary>
/// <param name="name">Its name; unnamed objects get one in angle brackets.</param>
/// <param name="type">Its type.</param>
/// <param name="isVolatile">Whether the object is declared volatile.</param>
/// <param name="range">Where it is declared.</param>
public abstract class Variable(string name, CType type, bool isVolatile, SourceRange range)
{
    /// <summary>The name as written.</summary>
    public string Name { get; } = name;

    /// <summary>The type; an array of unknown size has size 0.</summary>
    public CType Type { get; } = type;

    /// <summary>Whether the object is declared volatile.</summary>
    public bool IsVolatile { get; } = isVolatile;

    /// <summary>Where it is declared.</summary>
    public SourceRange Range { get; } = range;

    /// <inheritdoc/>
    public override string ToString() => Name;
}

/// <summary>A parameter or a variable with automatic storage.</summary>
public sealed class LocalVariable(string name, CType type, bool isVolatile, SourceRange range, bool isParameter)
    : Variable(name, type, isVolatile, range)
{
    /// <summary>Whether it is a parameter.</summary>
    public bool IsParameter { get; } = isParameter;
}

/// <summary>A variable with static storage: file scope, static local, or a string literal.</summary>
public sealed class GlobalVariable(string name, CType type, bool isVolatile, SourceRange range)
    : Variable(name, type, isVolatile, range)
{
    /// <summary>Whether other units see it under its name.</summary>
    public bool IsExternal { get; init; }

    /// <summary>Whether this unit only declares it (<c>extern</c>).</summary>
    public bool IsDeclarationOnly { get; init; }

    /// <summary>Whether a strong definition elsewhere wins.</summary>
    public bool IsWeak { get; init; }

    /// <summary>Whether it is <c>const</c>: nothing writes it.</summary>
    public bool IsConstant { get; init; }

    /// <summary>Whether start-up code leaves it uninitialised (<c>.noinit</c> sections).</summary>
    public bool IsUninitialized { get; init; }

    /// <summary>The name of another global that this one is an alias of (<c>alias</c> attribute), or null.</summary>
    public string? AliasOf { get; init; }

    /// <summary>The absolute address that an attribute or section gives it, or null.</summary>
    public ulong? AbsoluteAddress { get; init; }

    /// <summary>The initial value; null is all zero (or unknown, for a declaration without a definition).</summary>
    public Initializer? Initializer { get; set; }
}
