namespace PowerLint.Frontend;

/// <summary>Operators with two operands, as libclang numbers them.</summary>
internal enum CXBinaryOperatorKind : uint
{
    Invalid = 0,
    Mul = 3,
    Div,
    Rem,
    Add,
    Sub,
    Shl,
    Shr,
    ThreeWay,
    LT,
    GT,
    LE,
    GE,
    EQ,
    NE,
    And,
    Xor,
    Or,
    LAnd,
    LOr,
    Assign,
    MulAssign,
    DivAssign,
    RemAssign,
    AddAssign,
    SubAssign,
    ShlAssign,
    ShrAssign,
    AndAssign,
    XorAssign,
    OrAssign,
    Comma,
}

/// <summary>Operators with one operand, as libclang numbers them.</summary>
internal enum CXUnaryOperatorKind : uint
{
    Invalid = 0,
    PostInc,
    PostDec,
    PreInc,
    PreDec,
    AddrOf,
    Deref,
    Plus,
    Minus,
    Not,
    LNot,
    Real,
    Imag,
    Extension,
}

internal enum CXEvalResultKind : uint
{
    UnExposed = 0,
    Int = 1,
    Float = 2,
    StrLiteral = 4,
}

internal enum CXLinkageKind : uint
{
    Invalid = 0,
    NoLinkage,
    Internal,
    UniqueExternal,
    External,
}

internal enum CXStorageClass : uint
{
    Invalid = 0,
    None,
    Extern,
    Static,
    PrivateExtern,
    OpenCLWorkGroupLocal,
    Auto,
    Register,
}

internal enum CXChildVisitResult : uint
{
    Break = 0,
    Continue,
    Recurse,
}

internal enum CXTokenKind : uint
{
    Punctuation = 0,
    Keyword,
    Identifier,
    Literal,
    Comment,
}

internal enum CXDiagnosticSeverity : uint
{
    Ignored = 0,
    Note,
    Warning,
    Error,
    Fatal,
}
