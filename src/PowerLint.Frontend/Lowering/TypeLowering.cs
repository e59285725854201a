using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>Types of the syntax tree to types of the program form, with the target's sizes.</summary>
internal sealed class TypeLowering(TargetLayout target)
{
    private readonly Dictionary<ClangCursor, RecordLayout> _records = [];

    public PointerType Pointer { get; } = new(target.PointerBits);

    public IntegerType Int { get; } = new(target.IntBits, IsSigned: true);

    /// <summary>The type without typedefs, enumerations, qualifiers and atomics around it.</summary>
    public static ClangType Strip(ClangType type)
    {
        var canonical = type.Canonical;
        while (canonical.Kind == CXTypeKind.Atomic)
        {
            canonical = canonical.AtomicValue.Canonical;
        }

        return canonical;
    }

    public CType Lower(ClangType type)
    {
        var canonical = Strip(type);
        switch (canonical.Kind)
        {
            case CXTypeKind.Void:
                return VoidType.Instance;
            case CXTypeKind.Bool:
                return IntegerType.Boolean;
            case CXTypeKind.CharU:
            case CXTypeKind.UChar:
            case CXTypeKind.Char16:
            case CXTypeKind.Char32:
            case CXTypeKind.UShort:
            case CXTypeKind.UInt:
            case CXTypeKind.ULong:
            case CXTypeKind.ULongLong:
            case CXTypeKind.UInt128:
                return new IntegerType((int)canonical.SizeBytes * 8, IsSigned: false);
            case CXTypeKind.CharS:
            case CXTypeKind.SChar:
            case CXTypeKind.WChar:
            case CXTypeKind.Short:
            case CXTypeKind.Int:
            case CXTypeKind.Long:
            case CXTypeKind.LongLong:
            case CXTypeKind.Int128:
                return new IntegerType((int)canonical.SizeBytes * 8, IsSigned: true);
            case CXTypeKind.Enum:
                return Lower(new ClangType(LibClang.clang_getEnumDeclIntegerType(canonical.Declaration.Raw)));
            case CXTypeKind.Float:
            case CXTypeKind.Double:
            case CXTypeKind.LongDouble:
            case CXTypeKind.Float128:
            case CXTypeKind.Half:
            case CXTypeKind.Float16:
                return new FloatingType(canonical.SizeBytes <= 4 ? 32 : 64);
            case CXTypeKind.Pointer:
            case CXTypeKind.BlockPointer:
            case CXTypeKind.LValueReference:
            case CXTypeKind.RValueReference:
            case CXTypeKind.NullPtr:
            case CXTypeKind.FunctionProto:
            case CXTypeKind.FunctionNoProto:
                return Pointer;
            default:
                return new AggregateType(Math.Max(0, canonical.SizeBytes));
        }
    }

    /// <summary>The type of a value: arrays and functions become pointers.</summary>
    public CType LowerValue(ClangType type) => IsArray(type) ? Pointer : Lower(type);

    /// <summary>C's integer promotions.</summary>
    public CType Promote(CType type) => type is IntegerType integer && integer.Bits < target.IntBits ? Int : type;

    public static bool IsArray(ClangType type) =>
        Strip(type).Kind is CXTypeKind.ConstantArray or CXTypeKind.IncompleteArray or CXTypeKind.VariableArray;

    public static bool IsFunction(ClangType type) =>
        Strip(type).Kind is CXTypeKind.FunctionProto or CXTypeKind.FunctionNoProto;

    /// <summary>Whether it is a C++ reference.</summary>
    public static bool IsReference(ClangType type) =>
        type.Canonical.Kind is CXTypeKind.LValueReference or CXTypeKind.RValueReference;

    public static bool IsRecord(ClangType type) => Strip(type).Kind == CXTypeKind.Record;

    /// <summary>Whether an object of the type is volatile, or an array of volatile elements.</summary>
    public static bool IsVolatile(ClangType type)
    {
        var canonical = type.Canonical;
        while (IsArray(canonical) && !canonical.IsVolatile)
        {
            canonical = canonical.ArrayElement.Canonical;
        }

        return canonical.IsVolatile;
    }

    /// <summary>Whether an object of the type is constant, or an array of constant elements.</summary>
    public static bool IsConstant(ClangType type)
    {
        var canonical = type.Canonical;
        while (IsArray(canonical) && !canonical.IsConst)
        {
            canonical = canonical.ArrayElement.Canonical;
        }

        return canonical.IsConst;
    }

    /// <summary>What a pointer points at, or what an array holds.</summary>
    public static ClangType PointeeOf(ClangType pointer)
    {
        var stripped = Strip(pointer);
        return Strip(IsArray(stripped) ? stripped.ArrayElement : stripped.Pointee);
    }

    /// <summary>Bytes that a pointer of this type moves at a step: one for void and functions; null for variable arrays.</summary>
    public static long? StepBytes(ClangType pointer)
    {
        var canonical = PointeeOf(pointer);
        if (canonical.Kind is CXTypeKind.Void or CXTypeKind.FunctionProto or CXTypeKind.FunctionNoProto)
        {
            return 1;
        }

        var size = canonical.SizeBytes;
        return size < 0 ? null : size;
    }

    /// <summary>The fields of a structure or union.</summary>
    public RecordLayout Record(ClangType type)
    {
        var declaration = Strip(type).Declaration;
        if (!_records.TryGetValue(declaration, out var layout))
        {
            var record = Strip(type);
            var fields = record
                .Fields()
                .Select(field => new RecordField(
                    field,
                    NameOf(field),
                    field.Type,
                    field.FieldOffsetBits,
                    field.IsBitField ? field.BitFieldWidth : null
                ))
                .ToArray();
            layout = new RecordLayout(declaration.Kind == CXCursorKind.UnionDecl, record.SizeBytes, fields);
            _records.Add(declaration, layout);
        }

        return layout;
    }

    // libclang describes an unnamed member by its type and place, in brackets.
    private static string NameOf(ClangCursor field)
    {
        var name = field.Spelling;
        return name.Contains('(', StringComparison.Ordinal) ? "" : name;
    }

    /// <summary>
    /// Where an access to a bit-field falls: the smallest aligned unit that holds it, so that a register of several bytes is
    /// not read in halves; the smallest unaligned one where that would leave the record.
    /// </summary>
    public static (long OffsetBytes, BitField Field) Access(long offsetBits, int width, long recordBytes)
    {
        foreach (var unit in (ReadOnlySpan<int>)[8, 16, 32, 64])
        {
            var start = offsetBits / unit * unit;
            if (offsetBits + width <= start + unit && (start + unit) / 8 <= Math.Max(recordBytes, 1))
            {
                return (start / 8, new BitField((int)(offsetBits - start), width, unit));
            }
        }

        var first = offsetBits / 8;
        var bit = (int)(offsetBits % 8);
        var bits = bit + width;
        var storage =
            bits <= 8 ? 8
            : bits <= 16 ? 16
            : bits <= 32 ? 32
            : 64;
        return (first, new BitField(bit, width, storage));
    }
}

/// <summary>The members of a structure or union.</summary>
internal sealed record RecordLayout(bool IsUnion, long SizeBytes, IReadOnlyList<RecordField> Fields);

/// <summary>A member; unnamed structures and unions have an empty name, as have unnamed bit-fields.</summary>
internal sealed record RecordField(ClangCursor Cursor, string Name, ClangType Type, long OffsetBits, int? BitWidth)
{
    /// <summary>Whether it is padding that no initialiser fills.</summary>
    public bool IsPadding => BitWidth is not null && Name.Length == 0;
}
