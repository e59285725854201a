using System.Runtime.InteropServices;

namespace PowerLint.Frontend;

/// <summary>A type of the syntax tree.</summary>
internal readonly unsafe struct ClangType(CXType raw)
{
    public CXType Raw { get; } = raw;

    public CXTypeKind Kind => Raw.kind;

    public ClangType Canonical => new(LibClang.clang_getCanonicalType(Raw));

    public bool IsConst => LibClang.clang_isConstQualifiedType(Raw) != 0;

    public bool IsVolatile => LibClang.clang_isVolatileQualifiedType(Raw) != 0;

    public string Spelling => NativeString.Take(LibClang.clang_getTypeSpelling(Raw));

    public ClangType Pointee => new(LibClang.clang_getPointeeType(Raw));

    public ClangCursor Declaration => new(LibClang.clang_getTypeDeclaration(Raw));

    public ClangType Result => new(LibClang.clang_getResultType(Raw));

    public int ParameterCount => LibClang.clang_getNumArgTypes(Raw);

    /// <summary>Whether more arguments may follow; a function without a prototype is not variadic.</summary>
    public bool IsVariadic =>
        Canonical.Kind == CXTypeKind.FunctionProto && LibClang.clang_isFunctionTypeVariadic(Raw) != 0;

    public ClangType ArrayElement => new(LibClang.clang_getArrayElementType(Raw));

    public ClangType VectorElement => new(LibClang.clang_getElementType(Raw));

    /// <summary>Number of elements, or −1.</summary>
    public long ArrayLength => LibClang.clang_getArraySize(Raw);

    public ClangType AtomicValue => new(LibClang.clang_Type_getValueType(Raw));

    /// <summary>Size in bytes, or a negative error.</summary>
    public long SizeBytes => LibClang.clang_Type_getSizeOf(Raw);

    public ClangType Parameter(int index) => new(LibClang.clang_getArgType(Raw, (uint)index));

    /// <summary>The fields of a record, in order, unnamed ones included.</summary>
    public List<ClangCursor> Fields()
    {
        var fields = new List<ClangCursor>();
        var handle = GCHandle.Alloc(fields);
        try
        {
            LibClang.clang_Type_visitFields(Raw, &AddField, GCHandle.ToIntPtr(handle));
        }
        finally
        {
            handle.Free();
        }

        return fields;
    }

    [UnmanagedCallersOnly]
    private static CXChildVisitResult AddField(CXCursor cursor, nint data)
    {
        ((List<ClangCursor>)GCHandle.FromIntPtr(data).Target!).Add(new ClangCursor(cursor));
        return CXChildVisitResult.Continue;
    }

    public override string ToString() => Spelling;
}
