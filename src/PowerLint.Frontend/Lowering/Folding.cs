using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>
/// Builds expressions, computing what is constant on the way, so that a register's address is a number whatever casts and
/// sums the header spells it with. Never folds a load, and leaves undefined results (division by zero, wide shifts) alone.
/// </summary>
internal static class Folding
{
    public static Expression Convert(Expression operand, CType type, SourceRange range)
    {
        if (operand.Type == type)
        {
            return operand;
        }

        switch (operand, type)
        {
            case (IntegerConstant constant, IntegerType { Bits: 1 }):
                return new IntegerConstant(type, range, constant.Value == 0 ? 0u : 1u);
            case (IntegerConstant constant, IntegerType integer):
                return new IntegerConstant(type, range, Truncate(Extended(constant), integer.Bits));
            case (IntegerConstant constant, PointerType pointer):
                return new IntegerConstant(type, range, Truncate(Extended(constant), pointer.Bits));
            case (IntegerConstant { Type: IntegerType source } constant, FloatingType floating):
                double value = source.IsSigned ? unchecked((long)Extended(constant)) : Extended(constant);
                return new FloatingConstant(floating, range, Round(value, floating));
            case (FloatingConstant constant, FloatingType floating):
                return new FloatingConstant(floating, range, Round(constant.Value, floating));
            case (FloatingConstant constant, IntegerType { Bits: > 1 } integer)
                when Math.Abs(constant.Value) < long.MaxValue:
                var truncated = unchecked((ulong)(long)constant.Value);
                return new IntegerConstant(type, range, Truncate(truncated, integer.Bits));
            case (FloatingConstant constant, IntegerType { Bits: 1 }):
                return new IntegerConstant(type, range, constant.Value != 0 ? 1u : 0u);
            default:
                return new Conversion(type, range, operand);
        }
    }

    public static Expression Offset(Expression pointer, Expression index, long scaleBytes, SourceRange range) =>
        index is IntegerConstant { Type: IntegerType type } constant
            ? Offset(pointer, unchecked((long)Extended(constant) * scaleBytes), type, range)
            : new PointerOffset(pointer.Type, range, pointer, index, scaleBytes);

    /// <summary>Moves a pointer by a constant; moves one upon the other are summed up.</summary>
    public static Expression Offset(Expression pointer, long bytes, IntegerType indexType, SourceRange range)
    {
        if (pointer is PointerOffset { ScaleBytes: 1, Index: IntegerConstant inner } moved)
        {
            bytes = unchecked(bytes + (long)Extended(inner));
            pointer = moved.Pointer;
        }

        if (bytes == 0)
        {
            return pointer;
        }

        if (pointer is IntegerConstant { Type: PointerType type } address)
        {
            return new IntegerConstant(type, range, Truncate(unchecked(address.Value + (ulong)bytes), type.Bits));
        }

        // A narrow index may not hold the bytes that it stands for.
        var signed = new IntegerType(Math.Max(16, indexType.Bits), IsSigned: true);
        var fits = bytes >= -(1L << (signed.Bits - 1)) && bytes < 1L << (signed.Bits - 1);
        var wide = fits ? signed : new IntegerType(64, IsSigned: true);
        var index = new IntegerConstant(wide, range, Truncate(unchecked((ulong)bytes), wide.Bits));
        return new PointerOffset(pointer.Type, range, pointer, index, 1);
    }

    public static Expression Unary(CType type, SourceRange range, UnaryOperator @operator, Expression operand)
    {
        if (operand is IntegerConstant constant && type is IntegerType integer)
        {
            var value = @operator switch
            {
                UnaryOperator.Negate => unchecked(0 - Extended(constant)),
                UnaryOperator.Complement => ~Extended(constant),
                _ => constant.Value == 0 ? 1u : 0u,
            };
            return new IntegerConstant(type, range, Truncate(value, integer.Bits));
        }

        return operand is FloatingConstant floating && @operator == UnaryOperator.Negate
            ? new FloatingConstant((FloatingType)operand.Type, range, -floating.Value)
            : new UnaryOperation(type, range, @operator, operand);
    }

    public static Expression Binary(
        CType type,
        SourceRange range,
        BinaryOperator @operator,
        Expression left,
        Expression right
    )
    {
        if (
            left is IntegerConstant { Type: IntegerType leftType } a
            && right is IntegerConstant { Type: IntegerType } b
            && type is IntegerType result
            && Compute(@operator, a, leftType, b) is { } value
        )
        {
            return new IntegerConstant(type, range, Truncate(value, result.Bits));
        }

        if (
            left is FloatingConstant x
            && right is FloatingConstant y
            && type is FloatingType floating
            && Compute(@operator, x.Value, y.Value) is { } real
        )
        {
            return new FloatingConstant(floating, range, Round(real, floating));
        }

        return new BinaryOperation(type, range, @operator, left, right);
    }

    /// <summary>The value sign-extended or zero-extended to 64 bits.</summary>
    public static ulong Extended(IntegerConstant constant)
    {
        if (constant.Type is not IntegerType { IsSigned: true, Bits: < 64 } type)
        {
            return constant.Value;
        }

        var shift = 64 - type.Bits;
        return unchecked((ulong)((long)(constant.Value << shift) >> shift));
    }

    public static ulong Truncate(ulong value, int bits) => bits >= 64 ? value : value & ((1UL << bits) - 1);

    private static double Round(double value, FloatingType type) => type.Bits == 32 ? (float)value : value;

    private static double? Compute(BinaryOperator @operator, double left, double right) =>
        @operator switch
        {
            BinaryOperator.Add => left + right,
            BinaryOperator.Subtract => left - right,
            BinaryOperator.Multiply => left * right,
            BinaryOperator.Divide when right != 0 => left / right,
            _ => null,
        };

    private static ulong? Compute(BinaryOperator @operator, IntegerConstant a, IntegerType type, IntegerConstant b)
    {
        var left = Extended(a);
        var right = Extended(b);
        var signedLeft = unchecked((long)left);
        var signedRight = unchecked((long)right);
        var isSigned = type.IsSigned;
        return @operator switch
        {
            BinaryOperator.Add => unchecked(left + right),
            BinaryOperator.Subtract => unchecked(left - right),
            BinaryOperator.Multiply => unchecked(left * right),
            BinaryOperator.Divide or BinaryOperator.Remainder when right == 0 => null,
            BinaryOperator.Divide or BinaryOperator.Remainder when isSigned && signedRight == -1 => @operator
            == BinaryOperator.Divide
                ? unchecked(0 - left)
                : 0,
            BinaryOperator.Divide => isSigned ? unchecked((ulong)(signedLeft / signedRight)) : left / right,
            BinaryOperator.Remainder => isSigned ? unchecked((ulong)(signedLeft % signedRight)) : left % right,
            BinaryOperator.ShiftLeft or BinaryOperator.ShiftRight when right >= (ulong)type.Bits => null,
            BinaryOperator.ShiftLeft => left << (int)right,
            BinaryOperator.ShiftRight => isSigned ? unchecked((ulong)(signedLeft >> (int)right)) : left >> (int)right,
            BinaryOperator.And => left & right,
            BinaryOperator.Or => left | right,
            BinaryOperator.Xor => left ^ right,
            BinaryOperator.Equal => Truth(left == right),
            BinaryOperator.NotEqual => Truth(left != right),
            BinaryOperator.Less => Truth(isSigned ? signedLeft < signedRight : left < right),
            BinaryOperator.LessOrEqual => Truth(isSigned ? signedLeft <= signedRight : left <= right),
            BinaryOperator.Greater => Truth(isSigned ? signedLeft > signedRight : left > right),
            BinaryOperator.GreaterOrEqual => Truth(isSigned ? signedLeft >= signedRight : left >= right),
            _ => null,
        };

        static ulong Truth(bool value) => value ? 1u : 0u;
    }
}
