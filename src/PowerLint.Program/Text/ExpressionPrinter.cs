using System.Globalization;

namespace PowerLint.Program;

/// <summary>The text form of expressions.</summary>
internal static class ExpressionPrinter
{
    public static string Print(Initializer initializer, CType type) =>
        initializer.Entries is [ValueEntry { OffsetBytes: 0, BitField: null, Value: var only }]
        && (only.Type == type || type is not AggregateType)
            ? Print(only)
            : $"{{ {string.Join(", ", initializer.Entries.Select(Print))} }}";

    public static string Print(Expression expression) =>
        expression is Assignment assignment ? Assignment(assignment) : Operand(expression);

    private static string Operand(Expression expression) =>
        expression switch
        {
            IntegerConstant constant => Constant(constant),
            FloatingConstant constant =>
                $"{constant.Value.ToString("R", CultureInfo.InvariantCulture)}:{constant.Type}",
            UnknownValue unknown => $"unknown:{unknown.Type}({unknown.Reason}{Operands(unknown.Operands)})",
            AddressOfVariable address => $"&{address.Variable.Name}",
            AddressOfFunction address => $"&{address.Function.Name}",
            AddressOfLabel address => $"&&{address.Label}",
            PointerOffset offset => Offset(offset),
            PointerDifference difference =>
                $"pointer-difference:{difference.Type}({Operand(difference.Left)}, {Operand(difference.Right)}, {Number(difference.ScaleBytes)})",
            InitializedTemporary temporary =>
                $"(temporary {temporary.Variable.Name} : {temporary.Variable.Type} = {Print(temporary.Initializer, temporary.Variable.Type)})",
            Load load => $"{load.Type}{Volatile(load.IsVolatile)}[{Operand(load.Address)}]{Field(load.BitField)}",
            Assignment assignment => $"({Assignment(assignment)})",
            Call call => $"call:{call.Type} {Callee(call.Callee)}({string.Join(", ", call.Arguments.Select(Print))})",
            StatementExpression statement => Statements(statement),
            UnaryOperation unary => $"{Sign(unary.Operator)}:{unary.Type}({Operand(unary.Operand)})",
            BinaryOperation binary => Binary(binary),
            Conversion conversion => $"{conversion.Type}({Operand(conversion.Operand)})",
            LogicalOperation logical =>
                $"({Operand(logical.Left)} {(logical.IsAnd ? "&&" : "||")} {Operand(logical.Right)})",
            Conditional { WhenTrue: { } whenTrue } conditional =>
                $"({Operand(conditional.Condition)} ? {Operand(whenTrue)} : {Operand(conditional.WhenFalse)})",
            Conditional conditional => $"({Operand(conditional.Condition)} ?: {Operand(conditional.WhenFalse)})",
            Sequence sequence => $"({Operand(sequence.First)}, {Operand(sequence.Second)})",
            _ => throw new ArgumentException($"{expression.GetType().Name} has no text form.", nameof(expression)),
        };

    private static string Constant(IntegerConstant constant)
    {
        if (constant.Type is PointerType)
        {
            return string.Create(CultureInfo.InvariantCulture, $"0x{constant.Value:x}");
        }

        var isNegative =
            constant.Type is IntegerType { IsSigned: true, Bits: > 1 } type
            && (constant.Value >> (type.Bits - 1) & 1) == 1;
        var value = isNegative
            ? Number(unchecked((long)(constant.Value | (ulong.MaxValue << (int)(constant.Type.SizeBytes * 8 - 1)))))
            : constant.Value.ToString(CultureInfo.InvariantCulture);
        return $"{value}:{constant.Type}";
    }

    private static string Offset(PointerOffset offset) =>
        offset is { ScaleBytes: 1, Index: IntegerConstant constant }
            ? $"({Operand(offset.Pointer)} + {Constant(constant).Split(':')[0]})"
            : $"({Operand(offset.Pointer)} + {Operand(offset.Index)} * {Number(offset.ScaleBytes)})";

    private static string Assignment(Assignment assignment)
    {
        var target =
            $"{assignment.Type}{Volatile(assignment.IsVolatile)}[{Operand(assignment.Address)}]{Field(assignment.BitField)}";
        if (assignment.Operator is not { } @operator)
        {
            return $"{target} = {Operand(assignment.Value)}";
        }

        var scale = assignment.PointerScaleBytes == 0 ? "" : $" * {Number(assignment.PointerScaleBytes)}";
        var text = $"{target} {Sign(@operator)}= {Operand(assignment.Value)}{scale} in {assignment.ComputationType}";
        return assignment.YieldsOldValue ? $"{text} (old)" : text;
    }

    private static string Binary(BinaryOperation binary) =>
        binary.Left.Type == binary.Type || IsComparison(binary.Operator)
            ? $"({Operand(binary.Left)} {Sign(binary.Operator)} {Operand(binary.Right)})"
            : $"({Operand(binary.Left)} {Sign(binary.Operator)} {Operand(binary.Right)}):{binary.Type}";

    private static string Statements(StatementExpression statement)
    {
        var body = ProgramPrinter.Inline(statement.Body);
        var result = statement.Result is { } value ? $"yield {Print(value)} " : "";
        return $"({{ {body}{(body.Length > 0 ? " " : "")}{result}}})";
    }

    private static string Callee(Expression callee) =>
        callee is AddressOfFunction direct ? direct.Function.Name : $"*{Operand(callee)}";

    private static string Operands(IReadOnlyList<Expression> operands) =>
        string.Concat(operands.Select(operand => $"; {Operand(operand)}"));

    private static string Print(InitializerEntry entry) =>
        entry switch
        {
            ValueEntry value => $"+{Number(value.OffsetBytes)}{Field(value.BitField)}: {Print(value.Value)}",
            BytesEntry bytes =>
                $"+{Number(bytes.OffsetBytes)}: bytes/{Number(bytes.ElementBytes)} {Convert.ToHexStringLower(bytes.Bytes)}",
            _ => throw new ArgumentException($"{entry.GetType().Name} has no text form.", nameof(entry)),
        };

    private static bool IsComparison(BinaryOperator @operator) => @operator >= BinaryOperator.Equal;

    private static string Volatile(bool isVolatile) => isVolatile ? "!" : "";

    private static string Field(BitField? field) =>
        field is null
            ? ""
            : string.Create(
                CultureInfo.InvariantCulture,
                $".{field.BitOffset}..{field.BitOffset + field.BitWidth - 1}/{field.StorageBits}"
            );

    private static string Number(long value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Sign(UnaryOperator @operator) =>
        @operator switch
        {
            UnaryOperator.Negate => "-",
            UnaryOperator.Complement => "~",
            _ => "!",
        };

    private static string Sign(BinaryOperator @operator) =>
        @operator switch
        {
            BinaryOperator.Add => "+",
            BinaryOperator.Subtract => "-",
            BinaryOperator.Multiply => "*",
            BinaryOperator.Divide => "/",
            BinaryOperator.Remainder => "%",
            BinaryOperator.ShiftLeft => "<<",
            BinaryOperator.ShiftRight => ">>",
            BinaryOperator.And => "&",
            BinaryOperator.Or => "|",
            BinaryOperator.Xor => "^",
            BinaryOperator.Equal => "==",
            BinaryOperator.NotEqual => "!=",
            BinaryOperator.Less => "<",
            BinaryOperator.LessOrEqual => "<=",
            BinaryOperator.Greater => ">",
            _ => ">=",
        };
}
