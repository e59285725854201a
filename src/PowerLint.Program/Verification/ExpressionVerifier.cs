namespace PowerLint.Program;

/// <summary>Checks expressions.</summary>
internal sealed class ExpressionVerifier(ProgramVerifier verifier)
{
    public void VerifyScalar(Expression expression, string role)
    {
        Verify(expression);
        Require(expression, IsScalar(expression.Type), $"{role} of type {expression.Type}");
    }

    public void VerifyPointer(Expression expression, string role)
    {
        Verify(expression);
        Require(
            expression,
            expression.Type is PointerType || expression is UnknownValue,
            $"{role} of type {expression.Type} is no pointer"
        );
    }

    public void Verify(Initializer initializer, SourceRange range)
    {
        foreach (var entry in initializer.Entries)
        {
            verifier.Require(entry.OffsetBytes >= 0, range, "initialiser before its object");
            switch (entry)
            {
                case ValueEntry value:
                    Verify(value.Value);
                    VerifyField(value.BitField, value.Value);
                    break;
                case BytesEntry bytes:
                    verifier.Require(
                        bytes.ElementBytes is 1 or 2 or 4 or 8 && bytes.Bytes.Length % bytes.ElementBytes == 0,
                        range,
                        "bytes that do not make up whole elements"
                    );
                    break;
            }
        }
    }

    public void Verify(Expression expression)
    {
        switch (expression)
        {
            case IntegerConstant constant:
                VerifyConstant(constant);
                break;
            case AddressOfVariable address:
                Require(expression, expression.Type is PointerType, "address that is no pointer");
                if (address.Variable is LocalVariable local)
                {
                    verifier.Use(local, expression.Range);
                }

                break;
            case AddressOfFunction:
                Require(expression, expression.Type is PointerType, "address that is no pointer");
                break;
            case AddressOfLabel label:
                verifier.Jump(label.Label, label.Range);
                break;
            case InitializedTemporary temporary:
                verifier.Declare(temporary.Variable);
                Verify(temporary.Initializer, temporary.Range);
                break;
            case Load load:
                VerifyPointer(load.Address, "address read");
                VerifyField(load.BitField, load);
                break;
            case Assignment assignment:
                VerifyAssignment(assignment);
                break;
            case Call call:
                VerifyPointer(call.Callee, "callee");
                foreach (var argument in call.Arguments)
                {
                    Verify(argument);
                }

                break;
            case StatementExpression statements:
                verifier.VerifyStatement(statements.Body);
                if (statements.Result is { } result)
                {
                    Verify(result);
                    VerifySame(statements, result.Type, statements.Type, "result");
                }

                break;
            case UnknownValue unknown:
                foreach (var operand in unknown.Operands)
                {
                    Verify(operand);
                }

                break;
            default:
                VerifyOperation(expression);
                break;
        }
    }

    private void VerifyOperation(Expression expression)
    {
        switch (expression)
        {
            case FloatingConstant:
                break;
            case PointerOffset offset:
                VerifyPointer(offset.Pointer, "pointer moved");
                Verify(offset.Index);
                Require(offset, offset.Index.Type is IntegerType, $"index of type {offset.Index.Type}");
                break;
            case PointerDifference difference:
                VerifyPointer(difference.Left, "left side");
                VerifyPointer(difference.Right, "right side");
                Require(difference, difference.Type is IntegerType, "difference that is no integer");
                break;
            case UnaryOperation unary:
                VerifyScalar(unary.Operand, "operand");
                if (unary.Operator != UnaryOperator.LogicalNot)
                {
                    VerifySame(unary, unary.Operand.Type, unary.Type, "operand");
                }

                break;
            case BinaryOperation binary:
                VerifyBinary(binary);
                break;
            case Conversion conversion:
                VerifyScalar(conversion.Operand, "operand");
                Require(conversion, IsScalar(conversion.Type), $"conversion to {conversion.Type}");
                Require(conversion, conversion.Type != conversion.Operand.Type, "conversion to the same type");
                break;
            case LogicalOperation logical:
                VerifyScalar(logical.Left, "left side");
                VerifyScalar(logical.Right, "right side");
                break;
            case Conditional conditional:
                VerifyScalar(conditional.Condition, "condition");
                Verify(conditional.WhenFalse);
                VerifySame(conditional, conditional.WhenFalse.Type, conditional.Type, "value where false");
                if (conditional.WhenTrue is { } whenTrue)
                {
                    Verify(whenTrue);
                    VerifySame(conditional, whenTrue.Type, conditional.Type, "value where true");
                }
                else
                {
                    VerifySame(conditional, conditional.Condition.Type, conditional.Type, "condition");
                }

                break;
            case Sequence sequence:
                Verify(sequence.First);
                Verify(sequence.Second);
                VerifySame(sequence, sequence.Second.Type, sequence.Type, "result");
                break;
            default:
                Require(expression, condition: false, $"expression of unknown kind {expression.GetType().Name}");
                break;
        }
    }

    private void VerifyConstant(IntegerConstant constant)
    {
        var bits = constant.Type switch
        {
            IntegerType integer => integer.Bits,
            PointerType pointer => pointer.Bits,
            _ => 0,
        };
        Require(constant, bits > 0, $"integer constant of type {constant.Type}");
        Require(constant, bits >= 64 || constant.Value >> bits == 0, $"{constant.Value} does not fit {constant.Type}");
    }

    private void VerifyAssignment(Assignment assignment)
    {
        VerifyPointer(assignment.Address, "address written");
        Verify(assignment.Value);
        VerifyField(assignment.BitField, assignment);
        switch (assignment.Operator)
        {
            case null:
                VerifySame(assignment, assignment.Value.Type, assignment.Type, "value assigned");
                break;
            case BinaryOperator.ShiftLeft or BinaryOperator.ShiftRight:
                Require(assignment, assignment.Value.Type is IntegerType, "shift by a value that is no integer");
                break;
            case not null when assignment.Type is PointerType:
                Require(
                    assignment,
                    assignment.Value.Type is IntegerType,
                    "pointer moved by a value that is no integer"
                );
                break;
            default:
                VerifySame(assignment, assignment.Value.Type, assignment.ComputationType!, "right side");
                break;
        }
    }

    private void VerifyBinary(BinaryOperation binary)
    {
        VerifyScalar(binary.Left, "left side");
        VerifyScalar(binary.Right, "right side");
        switch (binary.Operator)
        {
            case BinaryOperator.ShiftLeft or BinaryOperator.ShiftRight:
                VerifySame(binary, binary.Left.Type, binary.Type, "left side");
                Require(binary, binary.Right.Type is IntegerType, "shift by a value that is no integer");
                break;
            case >= BinaryOperator.Equal:
                VerifySame(binary, binary.Left.Type, binary.Right.Type, "left side");
                Require(binary, binary.Type is IntegerType, "comparison that is no integer");
                break;
            default:
                VerifySame(binary, binary.Left.Type, binary.Type, "left side");
                VerifySame(binary, binary.Right.Type, binary.Type, "right side");
                break;
        }
    }

    private void VerifyField(BitField? field, Expression access)
    {
        if (field is not null)
        {
            Require(
                access,
                field.StorageBits is 8 or 16 or 32 or 64
                    && field.BitOffset >= 0
                    && field.BitWidth > 0
                    && field.BitOffset + field.BitWidth <= field.StorageBits,
                $"bit-field {field} outside its unit"
            );
            Require(access, access.Type is IntegerType, $"bit-field of type {access.Type}");
        }
    }

    // What could not be lowered has no type to agree with.
    private void VerifySame(Expression at, CType actual, CType expected, string role) =>
        Require(
            at,
            actual == expected
                || expected is VoidType
                || expected is AggregateType { Bytes: 0 }
                || actual is AggregateType { Bytes: 0 },
            $"{role} of type {actual}, not {expected}"
        );

    private void Require(Expression at, bool condition, string message) =>
        verifier.Require(condition, at.Range, message);

    private static bool IsScalar(CType type) =>
        type is IntegerType or FloatingType or PointerType or AggregateType { Bytes: 0 };
}
