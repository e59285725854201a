using PowerLint.Program;

namespace PowerLint.Frontend;

internal sealed partial class ExpressionLowering
{
    private Expression Unary(ClangCursor cursor)
    {
        var operand = FirstExpression(cursor);
        var range = Range(cursor);
        var type = ValueType(cursor);
        switch (cursor.UnaryOperator)
        {
            case CXUnaryOperatorKind.PostInc:
                return Step(cursor, operand, BinaryOperator.Add, yieldsOldValue: true);
            case CXUnaryOperatorKind.PostDec:
                return Step(cursor, operand, BinaryOperator.Subtract, yieldsOldValue: true);
            case CXUnaryOperatorKind.PreInc:
                return Step(cursor, operand, BinaryOperator.Add, yieldsOldValue: false);
            case CXUnaryOperatorKind.PreDec:
                return Step(cursor, operand, BinaryOperator.Subtract, yieldsOldValue: false);
            case CXUnaryOperatorKind.AddrOf:
                return TypeLowering.IsFunction(operand.Type) ? Value(operand) : PlaceOf(operand).Address;
            case CXUnaryOperatorKind.Deref:
                return TypeLowering.IsFunction(cursor.Type) ? Value(operand) : Read(PlaceOf(cursor), cursor);
            case CXUnaryOperatorKind.Plus:
            case CXUnaryOperatorKind.Extension:
                return ConvertTo(Value(operand), type, cursor);
            case CXUnaryOperatorKind.Minus:
                return Folding.Unary(type, range, UnaryOperator.Negate, ValueAs(operand, type));
            case CXUnaryOperatorKind.Not:
                return Folding.Unary(type, range, UnaryOperator.Complement, ValueAs(operand, type));
            case CXUnaryOperatorKind.LNot:
                return Folding.Unary(type, range, UnaryOperator.LogicalNot, Value(operand));
            default:
                return Unknown(cursor, "operator on complex numbers", Value(operand));
        }
    }

    private Expression Binary(ClangCursor cursor)
    {
        var parts = cursor.Children();
        var (left, right) = (parts[0], parts[^1]);
        var range = Range(cursor);
        var type = ValueType(cursor);
        switch (cursor.BinaryOperator)
        {
            case CXBinaryOperatorKind.Assign:
                return Assign(cursor, left, right);
            case CXBinaryOperatorKind.Comma:
                var first = Value(left);
                var second = Value(right);
                return first is IntegerConstant ? second : new Sequence(second.Type, range, first, second);
            case CXBinaryOperatorKind.LAnd:
            case CXBinaryOperatorKind.LOr:
                return Logical(cursor, left, right, cursor.BinaryOperator == CXBinaryOperatorKind.LAnd);
        }

        var leftIsPointer = IsPointer(left.Type);
        var rightIsPointer = IsPointer(right.Type);
        if (
            (leftIsPointer || rightIsPointer)
            && cursor.BinaryOperator is CXBinaryOperatorKind.Add or CXBinaryOperatorKind.Sub
        )
        {
            return PointerArithmetic(cursor, left, right, leftIsPointer && rightIsPointer, leftIsPointer);
        }

        return Operator(cursor.BinaryOperator) is { } @operator && type is IntegerType or FloatingType
            ? Folding.Binary(type, range, @operator, Value(left), Value(right))
            : Unknown(cursor, "operator on vectors or complex numbers", Value(left), Value(right));
    }

    private Expression Logical(ClangCursor cursor, ClangCursor left, ClangCursor right, bool isAnd)
    {
        var type = ValueType(cursor);
        var range = Range(cursor);
        var first = Condition(left);
        if (first is IntegerConstant constant && constant.Value != 0 != isAnd)
        {
            return new IntegerConstant(type, range, isAnd ? 0u : 1u);
        }

        return new LogicalOperation(type, range, isAnd, first, Condition(right));
    }

    private Expression PointerArithmetic(
        ClangCursor cursor,
        ClangCursor left,
        ClangCursor right,
        bool isDifference,
        bool pointerIsLeft
    )
    {
        var pointer = pointerIsLeft ? left : right;
        if (TypeLowering.StepBytes(pointer.Type) is not { } step)
        {
            return Unknown(cursor, "arithmetic on a pointer to arrays of variable length", Value(left), Value(right));
        }

        var range = Range(cursor);
        if (isDifference)
        {
            return new PointerDifference(ValueType(cursor), range, Value(left), Value(right), step);
        }

        var scale = cursor.BinaryOperator == CXBinaryOperatorKind.Sub ? -step : step;
        return pointerIsLeft
            ? Folding.Offset(Value(left), Value(right), scale, range)
            : Folding.Offset(Value(right), Value(left), scale, range);
    }

    private Assignment Assign(ClangCursor cursor, ClangCursor left, ClangCursor right)
    {
        var place = PlaceOf(left);
        var type = place.ObjectType(Types);
        return new Assignment(type, Range(cursor), place.Address, ValueAs(right, type), place.IsVolatile, place.Field);
    }

    private Expression CompoundAssignment(ClangCursor cursor)
    {
        var parts = cursor.Children();
        var (left, right) = (parts[0], parts[^1]);
        var place = PlaceOf(left);
        var type = place.ObjectType(Types);
        var value = Value(right);
        if (Operator(cursor.BinaryOperator) is not { } @operator || type is AggregateType)
        {
            return Unknown(cursor, "operator on vectors or complex numbers", place.Address, value);
        }

        long scale = 0;
        CType computation;
        if (type is PointerType)
        {
            if (TypeLowering.StepBytes(place.Type) is not { } step)
            {
                return Unknown(cursor, "arithmetic on a pointer to arrays of variable length", place.Address, value);
            }

            computation = type;
            scale = step;
        }
        else
        {
            // clang has converted the right side to the common type; the operands of a shift are promoted apart.
            computation = @operator is BinaryOperator.ShiftLeft or BinaryOperator.ShiftRight
                ? PromotedField(type, place)
                : Types.Promote(value.Type);
            value = @operator is BinaryOperator.ShiftLeft or BinaryOperator.ShiftRight
                ? value
                : ConvertTo(value, computation, right);
        }

        return new Assignment(
            type,
            Range(cursor),
            place.Address,
            value,
            place.IsVolatile,
            place.Field,
            @operator,
            computation,
            scale
        );
    }

    private Expression Step(ClangCursor cursor, ClangCursor operand, BinaryOperator @operator, bool yieldsOldValue)
    {
        var place = PlaceOf(operand);
        var range = Range(cursor);
        var type = place.ObjectType(Types);
        long scale = 0;
        CType computation;
        Expression one;
        switch (type)
        {
            case PointerType when TypeLowering.StepBytes(place.Type) is { } step:
                computation = type;
                one = new IntegerConstant(Types.Int, range, 1);
                scale = step;
                break;
            case IntegerType:
                computation = PromotedField(type, place);
                one = new IntegerConstant(computation, range, 1);
                break;
            case FloatingType floating:
                computation = floating;
                one = new FloatingConstant(floating, range, 1);
                break;
            default:
                return Unknown(cursor, "step of a pointer to arrays of variable length", place.Address);
        }

        return new Assignment(
            type,
            range,
            place.Address,
            one,
            place.IsVolatile,
            place.Field,
            @operator,
            computation,
            scale,
            yieldsOldValue
        );
    }

    // A bit-field narrower than int promotes to int, whatever its declared type (C11 6.3.1.1).
    private CType PromotedField(CType type, Place place) =>
        place.Field is { } field
        && (field.BitWidth < Types.Int.Bits || (field.BitWidth == Types.Int.Bits && IsSigned(type)))
            ? Types.Int
            : Types.Promote(type);

    private static bool IsSigned(CType type) => type is IntegerType { IsSigned: true };

    private static bool IsPointer(ClangType type) =>
        TypeLowering.Strip(type).Kind is CXTypeKind.Pointer or CXTypeKind.NullPtr || TypeLowering.IsArray(type);

    private static BinaryOperator? Operator(CXBinaryOperatorKind kind) =>
        kind switch
        {
            CXBinaryOperatorKind.Mul or CXBinaryOperatorKind.MulAssign => BinaryOperator.Multiply,
            CXBinaryOperatorKind.Div or CXBinaryOperatorKind.DivAssign => BinaryOperator.Divide,
            CXBinaryOperatorKind.Rem or CXBinaryOperatorKind.RemAssign => BinaryOperator.Remainder,
            CXBinaryOperatorKind.Add or CXBinaryOperatorKind.AddAssign => BinaryOperator.Add,
            CXBinaryOperatorKind.Sub or CXBinaryOperatorKind.SubAssign => BinaryOperator.Subtract,
            CXBinaryOperatorKind.Shl or CXBinaryOperatorKind.ShlAssign => BinaryOperator.ShiftLeft,
            CXBinaryOperatorKind.Shr or CXBinaryOperatorKind.ShrAssign => BinaryOperator.ShiftRight,
            CXBinaryOperatorKind.And or CXBinaryOperatorKind.AndAssign => BinaryOperator.And,
            CXBinaryOperatorKind.Or or CXBinaryOperatorKind.OrAssign => BinaryOperator.Or,
            CXBinaryOperatorKind.Xor or CXBinaryOperatorKind.XorAssign => BinaryOperator.Xor,
            CXBinaryOperatorKind.LT => BinaryOperator.Less,
            CXBinaryOperatorKind.GT => BinaryOperator.Greater,
            CXBinaryOperatorKind.LE => BinaryOperator.LessOrEqual,
            CXBinaryOperatorKind.GE => BinaryOperator.GreaterOrEqual,
            CXBinaryOperatorKind.EQ => BinaryOperator.Equal,
            CXBinaryOperatorKind.NE => BinaryOperator.NotEqual,
            _ => null,
        };
}
