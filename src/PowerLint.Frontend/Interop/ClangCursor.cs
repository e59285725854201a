using System.Runtime.InteropServices;

namespace PowerLint.Frontend;

/// <summary>A node of the syntax tree.</summary>
internal readonly unsafe struct ClangCursor(CXCursor raw) : IEquatable<ClangCursor>
{
    public CXCursor Raw { get; } = raw;

    public CXCursorKind Kind => Raw.kind;

    /// <summary>The same for all cursors on one declaration of a unit, and for no other.</summary>
    public nint Identity => Raw.data0;

    /// <summary>False where there is no such node.</summary>
    public bool Exists => (uint)Raw.kind != 0 && LibClang.clang_Cursor_isNull(Raw) == 0 && !IsInvalid;

    public bool IsInvalid => (uint)Raw.kind is >= 70 and <= 73;

    public bool IsExpression => (uint)Raw.kind is >= 100 and < 200;

    public bool IsStatement => (uint)Raw.kind is >= 200 and < 350;

    public bool IsAttribute => (uint)Raw.kind is >= 400 and < 500;

    public string Spelling => NativeString.Take(LibClang.clang_getCursorSpelling(Raw));

    /// <summary>The name with the types of its parameters.</summary>
    public string DisplayName => NativeString.Take(LibClang.clang_getCursorDisplayName(Raw));

    /// <summary>The name that the linker sees.</summary>
    public string LinkName => NativeString.Take(LibClang.clang_Cursor_getMangling(Raw));

    public ClangType Type => new(LibClang.clang_getCursorType(Raw));

    public ClangType ResultType => new(LibClang.clang_getCursorResultType(Raw));

    public ClangCursor Referenced => new(LibClang.clang_getCursorReferenced(Raw));

    public ClangCursor Definition => new(LibClang.clang_getCursorDefinition(Raw));

    public ClangCursor Canonical => new(LibClang.clang_getCanonicalCursor(Raw));

    public ClangCursor SemanticParent => new(LibClang.clang_getCursorSemanticParent(Raw));

    public bool IsDefinition => LibClang.clang_isCursorDefinition(Raw) != 0;

    public CXLinkageKind Linkage => LibClang.clang_getCursorLinkage(Raw);

    public CXStorageClass StorageClass => LibClang.clang_Cursor_getStorageClass(Raw);

    public bool IsInline => LibClang.clang_Cursor_isFunctionInlined(Raw) != 0;

    public bool HasAttributes => LibClang.clang_Cursor_hasAttrs(Raw) != 0;

    public bool HasStaticStorage => LibClang.clang_Cursor_hasVarDeclGlobalStorage(Raw) == 1;

    public ClangCursor VariableInitializer => new(LibClang.clang_Cursor_getVarDeclInitializer(Raw));

    public CXBinaryOperatorKind BinaryOperator => LibClang.clang_getCursorBinaryOperatorKind(Raw);

    public CXUnaryOperatorKind UnaryOperator => LibClang.clang_getCursorUnaryOperatorKind(Raw);

    public CXSourceLocation Location => LibClang.clang_getCursorLocation(Raw);

    public CXSourceRange Extent => LibClang.clang_getCursorExtent(Raw);

    public long EnumValue => LibClang.clang_getEnumConstantDeclValue(Raw);

    public bool IsBitField => LibClang.clang_Cursor_isBitField(Raw) != 0;

    public int BitFieldWidth => LibClang.clang_getFieldDeclBitWidth(Raw);

    /// <summary>Offset of a field in its own record, in bits; negative where there is none.</summary>
    public long FieldOffsetBits => LibClang.clang_Cursor_getOffsetOfField(Raw);

    public int ArgumentCount => LibClang.clang_Cursor_getNumArguments(Raw);

    public ClangCursor Argument(int index) => new(LibClang.clang_Cursor_getArgument(Raw, (uint)index));

    /// <summary>The declaration as C text with its attributes, without a body.</summary>
    public string PrintDeclaration()
    {
        // CXPrintingPolicy_TerseOutput: no bodies and no initialisers.
        const uint TerseOutput = 17;
        var policy = LibClang.clang_getCursorPrintingPolicy(Raw);
        LibClang.clang_PrintingPolicy_setProperty(policy, TerseOutput, 1);
        var text = NativeString.Take(LibClang.clang_getCursorPrettyPrinted(Raw, policy));
        LibClang.clang_PrintingPolicy_dispose(policy);
        return text;
    }

    /// <summary>The nodes directly below this one, in order.</summary>
    public List<ClangCursor> Children()
    {
        var children = new List<ClangCursor>();
        var handle = GCHandle.Alloc(children);
        try
        {
            LibClang.clang_visitChildren(Raw, &AddChild, GCHandle.ToIntPtr(handle));
        }
        finally
        {
            handle.Free();
        }

        return children;
    }

    [ThreadStatic]
    private static List<ClangCursor>? s_declarations;

    /// <summary>
    /// The functions and variables directly below a unit's root, in order. The list is the thread's own and good until the next
    /// call: those of a vendor's headers are too many to make a new one for each unit.
    /// </summary>
    public List<ClangCursor> FunctionsAndVariables()
    {
        var declarations = s_declarations ??= [];
        declarations.Clear();
        var handle = GCHandle.Alloc(declarations);
        try
        {
            LibClang.clang_visitChildren(Raw, &AddDeclaration, GCHandle.ToIntPtr(handle));
        }
        finally
        {
            handle.Free();
        }

        return declarations;
    }

    [UnmanagedCallersOnly]
    private static CXChildVisitResult AddDeclaration(CXCursor cursor, CXCursor parent, nint data)
    {
        if (cursor.kind is CXCursorKind.FunctionDecl or CXCursorKind.VarDecl)
        {
            ((List<ClangCursor>)GCHandle.FromIntPtr(data).Target!).Add(new ClangCursor(cursor));
        }

        return CXChildVisitResult.Continue;
    }

    [UnmanagedCallersOnly]
    private static CXChildVisitResult AddChild(CXCursor cursor, CXCursor parent, nint data)
    {
        ((List<ClangCursor>)GCHandle.FromIntPtr(data).Target!).Add(new ClangCursor(cursor));
        return CXChildVisitResult.Continue;
    }

    /// <summary>The value of an integer constant expression, or null.</summary>
    public long? EvaluateInteger()
    {
        var result = LibClang.clang_Cursor_Evaluate(Raw);
        if (result == 0)
        {
            return null;
        }

        long? value =
            LibClang.clang_EvalResult_getKind(result) != CXEvalResultKind.Int ? null
            : LibClang.clang_EvalResult_isUnsignedInt(result) != 0
                ? unchecked((long)LibClang.clang_EvalResult_getAsUnsigned(result))
            : LibClang.clang_EvalResult_getAsLongLong(result);
        LibClang.clang_EvalResult_dispose(result);
        return value;
    }

    /// <summary>The value of a floating constant expression, or null.</summary>
    public double? EvaluateFloating()
    {
        var result = LibClang.clang_Cursor_Evaluate(Raw);
        if (result == 0)
        {
            return null;
        }

        double? value =
            LibClang.clang_EvalResult_getKind(result) == CXEvalResultKind.Float
                ? LibClang.clang_EvalResult_getAsDouble(result)
                : null;
        LibClang.clang_EvalResult_dispose(result);
        return value;
    }

    public bool Equals(ClangCursor other) => LibClang.clang_equalCursors(Raw, other.Raw) != 0;

    public override bool Equals(object? obj) => obj is ClangCursor other && Equals(other);

    public override int GetHashCode() => unchecked((int)LibClang.clang_hashCursor(Raw));

    public override string ToString() => $"{Kind} {Spelling}";
}
