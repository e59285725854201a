namespace PowerLint.Program;

/// <content>Expressions.</content>
internal sealed partial class UnitWriter
{
    private void Expression(Expression? expression)
    {
        if (expression is null)
        {
            Tag(NodeTag.None);
            return;
        }

        if (IsAgain(expression))
        {
            return;
        }

        switch (expression)
        {
            case IntegerConstant constant:
                Start(NodeTag.IntegerConstant, constant);
                output.Unsigned(constant.Value);
                break;
            case FloatingConstant constant:
                Start(NodeTag.FloatingConstant, constant);
                output.Double(constant.Value);
                break;
            case UnknownValue unknown:
                Start(NodeTag.UnknownValue, unknown);
                output.String(unknown.Reason);
                Expressions(unknown.Operands);
                break;
            case UnaryOperation operation:
                Start(NodeTag.UnaryOperation, operation);
                output.Byte((byte)operation.Operator);
                Expression(operation.Operand);
                break;
            case BinaryOperation operation:
                Start(NodeTag.BinaryOperation, operation);
                output.Byte((byte)operation.Operator);
                Expression(operation.Left);
                Expression(operation.Right);
                break;
            case Conversion conversion:
                Start(NodeTag.Conversion, conversion);
                Expression(conversion.Operand);
                break;
            case LogicalOperation operation:
                Start(NodeTag.LogicalOperation, operation);
                output.Flag(operation.IsAnd);
                Expression(operation.Left);
                Expression(operation.Right);
                break;
            case Conditional conditional:
                Start(NodeTag.Conditional, conditional);
                Expression(conditional.Condition);
                Expression(conditional.WhenTrue);
                Expression(conditional.WhenFalse);
                break;
            case Sequence sequence:
                Start(NodeTag.Sequence, sequence);
                Expression(sequence.First);
                Expression(sequence.Second);
                break;
            case Load load:
                Start(NodeTag.Load, load);
                Expression(load.Address);
                output.Flag(load.IsVolatile);
                BitField(load.BitField);
                break;
            case Assignment assignment:
                Start(NodeTag.Assignment, assignment);
                Assignment(assignment);
                break;
            case AddressOfVariable address:
                Start(NodeTag.AddressOfVariable, address);
                AnyVariable(address.Variable);
                break;
            case AddressOfFunction address:
                Start(NodeTag.AddressOfFunction, address);
                Symbol(address.Function);
                break;
            case AddressOfLabel address:
                Start(NodeTag.AddressOfLabel, address);
                output.String(address.Label);
                break;
            case PointerOffset offset:
                Start(NodeTag.PointerOffset, offset);
                Expression(offset.Pointer);
                Expression(offset.Index);
                output.Signed(offset.ScaleBytes);
                break;
            case PointerDifference difference:
                Start(NodeTag.PointerDifference, difference);
                Expression(difference.Left);
                Expression(difference.Right);
                output.Signed(difference.ScaleBytes);
                break;
            case InitializedTemporary temporary:
                Start(NodeTag.InitializedTemporary, temporary);
                Local(temporary.Variable);
                Initializer(temporary.Initializer);
                break;
            case Call call:
                Start(NodeTag.Call, call);
                Expression(call.Callee);
                Expressions(call.Arguments);
                break;
            case StatementExpression block:
                Start(NodeTag.StatementExpression, block);
                Statement(block.Body);
                Expression(block.Result);
                break;
            default:
                throw new NotSupportedException(expression.GetType().Name);
        }

        _nodes.Add(expression, _nodes.Count);
    }

    private void Assignment(Assignment assignment)
    {
        Expression(assignment.Address);
        Expression(assignment.Value);
        output.Flag(assignment.IsVolatile);
        BitField(assignment.BitField);
        output.Count(assignment.Operator is { } compound ? (int)compound + 1 : 0);
        Type(assignment.ComputationType);
        output.Signed(assignment.PointerScaleBytes);
        output.Flag(assignment.YieldsOldValue);
    }

    private void Expressions(IReadOnlyList<Expression> expressions)
    {
        output.Count(expressions.Count);
        foreach (var expression in expressions)
        {
            Expression(expression);
        }
    }

    private void Start(NodeTag tag, Expression expression)
    {
        Tag(tag);
        Type(expression.Type);
        Range(expression.Range);
    }
}
