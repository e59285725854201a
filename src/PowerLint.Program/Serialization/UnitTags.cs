namespace PowerLint.Program;

/// <summary>What kind of type follows.</summary>
internal enum TypeTag : byte
{
    /// <summary>No type.</summary>
    None,

    /// <summary><see cref="IntegerType"/>.</summary>
    Integer,

    /// <summary><see cref="FloatingType"/>.</summary>
    Floating,

    /// <summary><see cref="PointerType"/>.</summary>
    Pointer,

    /// <summary><see cref="AggregateType"/>.</summary>
    Aggregate,

    /// <summary><see cref="VoidType"/>.</summary>
    Void,
}

/// <summary>What kind of node follows, named after the node's class.</summary>
internal enum NodeTag : byte
{
    /// <summary>No node.</summary>
    None,

    /// <summary>A node that was written before, by its number.</summary>
    Again,

#pragma warning disable CS1591 // The classes of the same names say it.
    Block,
    ExpressionStatement,
    LocalDeclaration,
    If,
    Loop,
    Switch,
    CaseLabel,
    Label,
    Goto,
    ComputedGoto,
    Break,
    Continue,
    Return,
    UnknownEffect,
    InlineAssembly,
    IntegerConstant,
    FloatingConstant,
    UnknownValue,
    UnaryOperation,
    BinaryOperation,
    Conversion,
    LogicalOperation,
    Conditional,
    Sequence,
    Load,
    Assignment,
    AddressOfVariable,
    AddressOfFunction,
    AddressOfLabel,
    PointerOffset,
    PointerDifference,
    InitializedTemporary,
    Call,
    StatementExpression,
#pragma warning restore CS1591
}
