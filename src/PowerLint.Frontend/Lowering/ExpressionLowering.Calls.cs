using System.Text;
using PowerLint.Program;

namespace PowerLint.Frontend;

internal sealed partial class ExpressionLowering
{
    private const string BuiltinPrefix = "__builtin_";

    // Compiler built-ins that are the library function of the same name.
    private static readonly HashSet<string> LibraryBuiltins = new(StringComparer.Ordinal)
    {
        "abort",
        "abs",
        "ceil",
        "ceilf",
        "exit",
        "fabs",
        "fabsf",
        "floor",
        "floorf",
        "labs",
        "llabs",
        "lround",
        "lroundf",
        "memchr",
        "memcmp",
        "memcpy",
        "memmove",
        "memset",
        "printf",
        "puts",
        "round",
        "roundf",
        "snprintf",
        "sprintf",
        "strcat",
        "strchr",
        "strcmp",
        "strcpy",
        "strlen",
        "strncat",
        "strncmp",
        "strncpy",
        "trunc",
        "truncf",
    };

    // Methods have their object as a further argument, and references are addresses that the source does not write.
    private static bool IsOfCPlusPlus(ClangCursor call)
    {
        var called = call.Referenced;
        if (
            called.Kind
            is CXCursorKind.CXXMethod
                or CXCursorKind.CXXConstructor
                or CXCursorKind.CXXDestructor
                or CXCursorKind.CXXConversion
                or CXCursorKind.FunctionTemplate
        )
        {
            return true;
        }

        if (called.Kind != CXCursorKind.FunctionDecl)
        {
            return call.Children().Count == 0;
        }

        return TypeLowering.IsReference(called.ResultType)
            || Enumerable
                .Range(0, Math.Max(0, called.ArgumentCount))
                .Any(i => TypeLowering.IsReference(called.Argument(i).Type));
    }

    private Expression Call(ClangCursor cursor)
    {
        if (unit.IsCPlusPlus && IsOfCPlusPlus(cursor))
        {
            return Unknown(
                cursor,
                "call of a C++ method, or with C++ references",
                [
                    .. cursor
                        .Children()
                        .Where(child => child.IsExpression && child.Kind != CXCursorKind.MemberRefExpr)
                        .Select(Value),
                ]
            );
        }

        var callee = cursor.Children()[0];
        var name = BuiltinName(callee);
        if (name is not null && Builtin(cursor, name) is { } special)
        {
            return special;
        }

        var range = Range(cursor);
        var target = name is not null
            ? new AddressOfFunction(Types.Pointer, Range(callee), unit.Mention(LibraryName(name)))
            : Value(callee);
        var type = FunctionType(callee);
        var count = Math.Max(0, cursor.ArgumentCount);
        var arguments = new Expression[count];
        for (var i = 0; i < count; i++)
        {
            var isList = i == 0 && name is "__builtin_va_start" or "__builtin_va_end" or "__builtin_va_copy";
            if (isList)
            {
                // The list is changed, whatever type it has.
                arguments[i] = AddressOrValue(cursor.Argument(i));
                continue;
            }

            var argument = Value(cursor.Argument(i));
            arguments[i] =
                type is { } signature && i < signature.ParameterCount
                    ? ConvertTo(argument, Types.LowerValue(signature.Parameter(i)), cursor)
                    : argument;
        }

        return new Call(ValueType(cursor), range, target, arguments);
    }

    private static ClangType? FunctionType(ClangCursor callee)
    {
        var type = TypeLowering.Strip(callee.Type);
        if (type.Kind == CXTypeKind.Pointer)
        {
            type = TypeLowering.Strip(type.Pointee);
        }

        return type.Kind == CXTypeKind.FunctionProto ? type : null;
    }

    private static string? BuiltinName(ClangCursor callee)
    {
        var designator = SkipConversions(callee);
        if (designator.Kind != CXCursorKind.DeclRefExpr)
        {
            return null;
        }

        var name = designator.Spelling;
        return name.StartsWith(BuiltinPrefix, StringComparison.Ordinal) ? name : null;
    }

    private static string LibraryName(string builtin) =>
        LibraryBuiltins.Contains(builtin[BuiltinPrefix.Length..]) ? builtin[BuiltinPrefix.Length..] : builtin;

    // Built-ins that have a meaning of their own; null for those that are calls like any other.
    private Expression? Builtin(ClangCursor cursor, string name)
    {
        switch (name[BuiltinPrefix.Length..])
        {
            case "expect" or "expect_with_probability" or "assume_aligned" or "launder":
                return ValueAs(cursor.Argument(0), ValueType(cursor));
            case "assume":
                return new IntegerConstant(Types.Int, Range(cursor), 0);
            case "constant_p":
                // An optimising compiler may answer 1 for more than this; 0 is right for what is not constant in the source.
                var isConstant = Value(cursor.Argument(0)) is IntegerConstant or FloatingConstant;
                return new IntegerConstant(ValueType(cursor), Range(cursor), isConstant ? 1u : 0u);
            case "inf" or "inff" or "huge_val" or "huge_valf" or "nan" or "nanf":
                return ValueType(cursor) is FloatingType type
                    ? new FloatingConstant(
                        type,
                        Range(cursor),
                        name.Contains("nan", StringComparison.Ordinal) ? double.NaN : double.PositiveInfinity
                    )
                    : null;
            default:
                // bswap16(0x1234) and the like.
                return
                    ValueType(cursor) is IntegerType integer
                    && cursor.ArgumentCount > 0
                    && cursor.EvaluateInteger() is { } value
                    ? new IntegerConstant(
                        integer,
                        Range(cursor),
                        Folding.Truncate(unchecked((ulong)value), integer.Bits)
                    )
                    : null;
        }
    }

    // Nodes without a kind of their own that their first word tells: __builtin_va_arg, __builtin_offsetof, atomic accesses.
    private Expression? Named(ClangCursor cursor, List<ClangCursor> operands)
    {
        if (operands.Count > 0 && StartsTogether(cursor, operands[0]))
        {
            return null;
        }

        var word = FirstWord(cursor);
        switch (word)
        {
            case "__builtin_va_arg":
                return new Call(
                    ValueType(cursor),
                    Range(cursor),
                    new AddressOfFunction(Types.Pointer, Range(cursor), unit.Mention(word)),
                    [.. operands.Take(1).Select(operand => AddressOrValue(operand))]
                );
            case "__builtin_offsetof":
            case "__builtin_types_compatible_p":
                return Evaluated(cursor);
            default:
                return
                    word.StartsWith("__atomic_", StringComparison.Ordinal)
                    || word.StartsWith("__c11_atomic_", StringComparison.Ordinal)
                    ? Atomic(cursor, word, operands)
                    : null;
        }
    }

    private Expression AddressOrValue(ClangCursor cursor)
    {
        var list = SkipConversions(cursor);
        return list.Kind is CXCursorKind.DeclRefExpr or CXCursorKind.MemberRefExpr
            ? PlaceOf(list).Address
            : Value(cursor);
    }

    private Expression Evaluated(ClangCursor cursor) =>
        cursor.EvaluateInteger() is { } value && ValueType(cursor) is IntegerType type
            ? new IntegerConstant(type, Range(cursor), Folding.Truncate(unchecked((ulong)value), type.Bits))
            : Unknown(cursor, "offset that is not constant");

    // The tree gives the object, the memory order and then the values, whatever the order in the source.
    private Expression Atomic(ClangCursor cursor, string name, List<ClangCursor> operands)
    {
        var type = ValueType(cursor);
        var range = Range(cursor);
        var pointer = Value(operands[0]);
        if (name.EndsWith("_load_n", StringComparison.Ordinal) || name is "__c11_atomic_load")
        {
            return new Load(type, range, pointer, isVolatile: true);
        }

        var pointee = TypeLowering.PointeeOf(operands[0].Type);
        var objectType = Types.Lower(pointee);
        if (
            operands.Count > 2
            && (
                name.EndsWith("_store_n", StringComparison.Ordinal)
                || name is "__c11_atomic_store" or "__c11_atomic_init"
            )
        )
        {
            return new Assignment(objectType, range, pointer, ValueAs(operands[2], objectType), isVolatile: true);
        }

        if (operands.Count > 2 && AtomicOperator(name) is { } @operator && objectType is IntegerType)
        {
            var computation = Types.Promote(objectType);
            return new Assignment(
                objectType,
                range,
                pointer,
                ValueAs(operands[2], computation),
                isVolatile: true,
                bitField: null,
                @operator,
                computation,
                pointerScaleBytes: 0,
                yieldsOldValue: name.Contains("_fetch_", StringComparison.Ordinal)
            );
        }

        return new Call(
            type,
            range,
            new AddressOfFunction(Types.Pointer, range, unit.Mention(name)),
            [pointer, .. operands.Skip(1).Select(Value)]
        );
    }

    private static BinaryOperator? AtomicOperator(string name)
    {
        foreach (
            var (word, @operator) in (ReadOnlySpan<(string, BinaryOperator)>)
                [
                    ("add", BinaryOperator.Add),
                    ("sub", BinaryOperator.Subtract),
                    ("and", BinaryOperator.And),
                    ("xor", BinaryOperator.Xor),
                    ("or", BinaryOperator.Or),
                ]
        )
        {
            if (
                name.EndsWith($"_fetch_{word}", StringComparison.Ordinal)
                || name.EndsWith($"_{word}_fetch", StringComparison.Ordinal)
            )
            {
                return @operator;
            }
        }

        return null;
    }

    private static bool StartsTogether(ClangCursor left, ClangCursor right)
    {
        var (a, b) = (left.Extent, right.Extent);
        return a.begin_int_data == b.begin_int_data;
    }

    private string FirstWord(ClangCursor cursor)
    {
        var (file, offset) = unit.Sources.Spelling(LibClang.clang_getRangeStart(cursor.Extent));
        var text = unit.Sources.Contents(file);
        var end = offset;
        while (end < text.Length && (char.IsAsciiLetterOrDigit((char)text[end]) || text[end] == (byte)'_'))
        {
            end++;
        }

        return offset < end ? Encoding.ASCII.GetString(text[offset..end]) : "";
    }

    // The tree shows the controlling expression and every association's value, not their types.
    private ClangCursor? Selected(ClangCursor cursor)
    {
        var values = cursor.Children().Where(child => child.IsExpression).ToList();
        if (values.Count < 2)
        {
            return values.Count == 1 ? values[0] : null;
        }

        var type = cursor.Type.Canonical;
        var matching = values
            .Skip(1)
            .Where(value => LibClang.clang_equalTypes(value.Type.Canonical.Raw, type.Raw) != 0)
            .ToList();
        if (matching.Count == 1)
        {
            return matching[0];
        }

        return GenericAssociations.Choose(cursor, values, unit.Sources);
    }
}
