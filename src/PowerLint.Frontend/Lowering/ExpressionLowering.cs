using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>
/// Lowers expressions. libclang does not say what its implicit conversions are, so they are worked out from the types: the
/// value of a child, converted to the type of the node above it.
/// </summary>
internal sealed partial class ExpressionLowering(
    UnitLowering unit,
    FunctionLowering? function,
    FunctionLowering? labels
)
{
    public UnitLowering Unit => unit;

    private TypeLowering Types => unit.Types;

    private CType ValueType(ClangCursor cursor) => Types.LowerValue(cursor.Type);

    private SourceRange Range(ClangCursor cursor) => unit.Sources.Range(cursor);

    /// <summary>An expression whose value nobody asks for.</summary>
    public Expression Effect(ClangCursor cursor) => Value(cursor);

    /// <summary>A condition: any scalar.</summary>
    public Expression Condition(ClangCursor cursor) => Value(cursor);

    /// <summary>The value, converted as an assignment to an object of the type would.</summary>
    public Expression ValueAs(ClangCursor cursor, CType type) => ConvertTo(Value(cursor), type, cursor);

    /// <summary>The value of an expression: objects are read, arrays and functions become pointers.</summary>
    public Expression Value(ClangCursor cursor)
    {
        if (unit.Nesting >= UnitLowering.MaximumNesting)
        {
            return Unknown(cursor, $"expression nested more than {UnitLowering.MaximumNesting} deep");
        }

        if (!cursor.Exists)
        {
            // Where the parser has made something up after an error.
            return new UnknownValue(Types.Int, SourceRange.None, "missing operand", []);
        }

        unit.Nesting++;
        var value = ValueOfKind(cursor);
        unit.Nesting--;
        return value;
    }

    private Expression ValueOfKind(ClangCursor cursor)
    {
        switch (cursor.Kind)
        {
            case CXCursorKind.ParenExpr:
                return Value(FirstExpression(cursor));
            case CXCursorKind.IntegerLiteral:
            case CXCursorKind.CharacterLiteral:
            case CXCursorKind.BoolLiteralExpr:
            case CXCursorKind.NullPointerLiteralExpr:
            case CXCursorKind.UnaryExpr:
                return Constant(cursor);
            case CXCursorKind.FloatingLiteral:
                return ValueType(cursor) is FloatingType floating && cursor.EvaluateFloating() is { } real
                    ? new FloatingConstant(floating, Range(cursor), floating.Bits == 32 ? (float)real : real)
                    : Unknown(cursor, "floating constant");
            case CXCursorKind.DeclRefExpr:
                return Reference(cursor);
            case CXCursorKind.MemberRefExpr:
            case CXCursorKind.ArraySubscriptExpr:
            case CXCursorKind.StringLiteral:
            case CXCursorKind.CompoundLiteralExpr:
                return Read(PlaceOf(cursor), cursor);
            case CXCursorKind.UnaryOperator:
                return Unary(cursor);
            case CXCursorKind.BinaryOperator:
                return Binary(cursor);
            case CXCursorKind.CompoundAssignOperator:
                return CompoundAssignment(cursor);
            case CXCursorKind.ConditionalOperator:
                var parts = cursor.Children();
                return Choose(cursor, Condition(parts[0]), Value(parts[1]), Value(parts[2]));
            case CXCursorKind.CStyleCastExpr:
            case CXCursorKind.CXXStaticCastExpr:
            case CXCursorKind.CXXReinterpretCastExpr:
            case CXCursorKind.CXXConstCastExpr:
            case CXCursorKind.CXXFunctionalCastExpr:
                return Cast(cursor);
            case CXCursorKind.CallExpr:
                return Call(cursor);
            case CXCursorKind.StmtExpr:
                return StatementExpression(cursor);
            case CXCursorKind.AddrLabelExpr:
                var label = cursor.Children().FirstOrDefault(child => child.Kind == CXCursorKind.LabelRef).Referenced;
                return labels is null || !label.Exists
                    ? Unknown(cursor, "address of a label outside a function")
                    : new AddressOfLabel(Types.Pointer, Range(cursor), labels.LabelName(label));
            case CXCursorKind.GenericSelectionExpr:
                return Selected(cursor) is { } selected
                    ? ValueAs(selected, ValueType(cursor))
                    : Unknown(cursor, "generic selection");
            case CXCursorKind.UnexposedExpr:
                return Unexposed(cursor);
            default:
                return Unknown(cursor, $"expression of kind {cursor.Kind}");
        }
    }

    /// <summary>Goes through parentheses and <c>__extension__</c>.</summary>
    public static ClangCursor SkipParentheses(ClangCursor cursor)
    {
        while (
            cursor.Kind == CXCursorKind.ParenExpr
            || (cursor.Kind == CXCursorKind.UnaryOperator && cursor.UnaryOperator == CXUnaryOperatorKind.Extension)
        )
        {
            cursor = FirstExpression(cursor);
        }

        return cursor;
    }

    /// <summary>Goes through parentheses and implicit conversions.</summary>
    public static ClangCursor SkipConversions(ClangCursor cursor)
    {
        while (true)
        {
            cursor = SkipParentheses(cursor);
            if (cursor.Kind != CXCursorKind.UnexposedExpr || cursor.Children() is not [{ IsExpression: true } only])
            {
                return cursor;
            }

            cursor = only;
        }
    }

    private static ClangCursor FirstExpression(ClangCursor cursor) =>
        cursor.Children().FirstOrDefault(child => child.IsExpression);

    private static ClangCursor LastExpression(ClangCursor cursor) =>
        cursor.Children().LastOrDefault(child => child.IsExpression);

    private Expression ConvertTo(Expression value, CType type, ClangCursor at)
    {
        if (value is UnknownValue unknown && type is not VoidType && value.Type != type)
        {
            return new UnknownValue(type, unknown.Range, unknown.Reason, unknown.Operands);
        }

        return type is VoidType or AggregateType || value.Type is VoidType or AggregateType
            ? value
            : Folding.Convert(value, type, value.Range.Line > 0 ? value.Range : Range(at));
    }

    private Expression Constant(ClangCursor cursor)
    {
        var type = ValueType(cursor);
        if (cursor.EvaluateInteger() is { } value && type is IntegerType integer)
        {
            return new IntegerConstant(type, Range(cursor), Folding.Truncate(unchecked((ulong)value), integer.Bits));
        }

        if (cursor.Kind == CXCursorKind.UnaryExpr && SizeOfVariableArray(cursor, type) is { } size)
        {
            return size;
        }

        return cursor.Kind == CXCursorKind.NullPointerLiteralExpr
            ? new IntegerConstant(Types.Pointer, Range(cursor), 0)
            : Unknown(cursor, cursor.Kind == CXCursorKind.UnaryExpr ? "size that is not constant" : "constant");
    }

    private Expression? SizeOfVariableArray(ClangCursor cursor, CType type)
    {
        var operand = cursor.Children().FirstOrDefault();
        while (operand.Kind == CXCursorKind.ParenExpr)
        {
            operand = FirstExpression(operand);
        }

        if (operand.Kind != CXCursorKind.DeclRefExpr || function?.LengthOf(operand.Referenced) is not { } length)
        {
            return null;
        }

        var range = Range(cursor);
        var count = new Load(
            length.Type,
            range,
            new AddressOfVariable(Types.Pointer, range, length),
            isVolatile: false
        );
        var bytes = TypeLowering.Strip(operand.Type).ArrayElement.SizeBytes;
        return new BinaryOperation(
            type,
            range,
            BinaryOperator.Multiply,
            Folding.Convert(count, type, range),
            new IntegerConstant(type, range, (ulong)bytes)
        );
    }

    private Expression Reference(ClangCursor cursor)
    {
        var referenced = cursor.Referenced;
        switch (referenced.Kind)
        {
            case CXCursorKind.EnumConstantDecl:
                var type = ValueType(cursor);
                var value = unchecked((ulong)referenced.EnumValue);
                return new IntegerConstant(
                    type,
                    Range(cursor),
                    Folding.Truncate(value, (type as IntegerType)?.Bits ?? 64)
                );
            case CXCursorKind.FunctionDecl:
                return new AddressOfFunction(Types.Pointer, Range(cursor), unit.Mention(referenced));
            default:
                return TypeLowering.IsReference(referenced.Type)
                    ? Unknown(cursor, "C++ reference")
                    : Read(PlaceOf(cursor), cursor);
        }
    }

    private Expression Read(Place place, ClangCursor cursor)
    {
        if (!place.IsDecayed && (TypeLowering.IsArray(place.Type) || TypeLowering.IsFunction(place.Type)))
        {
            return place.Address;
        }

        return new Load(place.ObjectType(Types), Range(cursor), place.Address, place.IsVolatile, place.Field);
    }

    private Expression Cast(ClangCursor cursor)
    {
        var value = Value(LastExpression(cursor));
        var type = ValueType(cursor);
        return type is AggregateType && value.Type != type
            ? Unknown(cursor, "cast to a union", value)
            : ConvertTo(value, type, cursor);
    }

    private Expression Choose(ClangCursor cursor, Expression condition, Expression? whenTrue, Expression whenFalse)
    {
        var type = ValueType(cursor);
        if (whenTrue is not null && condition is IntegerConstant constant)
        {
            return ConvertTo(constant.Value != 0 ? whenTrue : whenFalse, type, cursor);
        }

        return new Conditional(
            type,
            Range(cursor),
            // With no middle operand the condition is the result, too: converting keeps what is zero and what is not.
            whenTrue is null
                ? ConvertTo(condition, type, cursor)
                : condition,
            whenTrue is null ? null : ConvertTo(whenTrue, type, cursor),
            ConvertTo(whenFalse, type, cursor)
        );
    }

    private Expression StatementExpression(ClangCursor cursor)
    {
        if (function is null)
        {
            return Unknown(cursor, "statement expression outside a function");
        }

        var compound = cursor.Children()[0];
        var children = compound.Children();
        var statements = new List<Statement>();
        Expression? result = null;
        for (var i = 0; i < children.Count; i++)
        {
            if (i == children.Count - 1 && children[i].IsExpression)
            {
                result = Value(children[i]);
            }
            else
            {
                function.Statements.LowerInto(statements, children[i]);
            }
        }

        var type = ValueType(cursor);
        return new StatementExpression(
            type,
            Range(cursor),
            new Block(Range(compound), statements),
            result is null ? null : ConvertTo(result, type, cursor)
        );
    }

    // Nodes that libclang has no name for: implicit conversions most of all.
    private Expression Unexposed(ClangCursor cursor)
    {
        var children = cursor.Children();
        var operands = children.Where(child => child.IsExpression).ToList();
        if (cursor.Type.Kind == CXTypeKind.Dependent)
        {
            return Unknown(cursor, "expression that does not compile", [.. operands.Select(Value)]);
        }

        if (Named(cursor, operands) is { } named)
        {
            return named;
        }

        switch (operands.Count)
        {
            case 1 when !children.Exists(child => child.Kind == CXCursorKind.MemberRef):
                return ConvertTo(Value(operands[0]), ValueType(cursor), cursor);
            case 3:
                // __builtin_choose_expr: only the chosen side is compiled.
                var isFirst = operands[0].EvaluateInteger() is { } value and not 0;
                return ValueAs(operands[isFirst ? 1 : 2], ValueType(cursor));
            case 4:
                // a ?: b, shown as the common operand, the condition, the two results.
                return Choose(cursor, Condition(operands[0]), null, Value(operands[3]));
            default:
                return cursor.EvaluateInteger() is { } constant && ValueType(cursor) is IntegerType type
                    ? new IntegerConstant(type, Range(cursor), Folding.Truncate(unchecked((ulong)constant), type.Bits))
                    : Unknown(cursor, "expression that the parser does not name", [.. operands.Select(Value)]);
        }
    }

    private UnknownValue Unknown(ClangCursor cursor, string reason, params IReadOnlyList<Expression> operands)
    {
        var range = Range(cursor);
        unit.ReportGap(range, reason);
        return new UnknownValue(ValueType(cursor), range, reason, operands);
    }
}
