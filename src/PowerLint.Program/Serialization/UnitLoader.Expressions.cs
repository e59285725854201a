namespace PowerLint.Program;

/// <content>Expressions.</content>
internal sealed partial class UnitLoader
{
    private Expression Expression() => OptionalExpression() ?? throw UnitInput.Broken();

    private Expression? OptionalExpression()
    {
        var tag = (NodeTag)input.Byte();
        switch (tag)
        {
            case NodeTag.None:
                return null;
            case NodeTag.Again:
                return (Expression)_nodes[input.Number()];
            default:
                Enter();
                var expression = Expression(tag, Type(), Range());
                _depth--;
                _nodes.Add(expression);
                return expression;
        }
    }

    private Expression Expression(NodeTag tag, CType type, SourceRange range) =>
        tag switch
        {
            NodeTag.IntegerConstant => new IntegerConstant(type, range, input.Unsigned()),
            NodeTag.FloatingConstant => new FloatingConstant((FloatingType)type, range, input.Double()),
            NodeTag.UnknownValue => new UnknownValue(type, range, input.Name(), Expressions()),
            NodeTag.UnaryOperation => new UnaryOperation(type, range, Unary(), Expression()),
            NodeTag.BinaryOperation => new BinaryOperation(
                type,
                range,
                Binary(input.Byte()),
                Expression(),
                Expression()
            ),
            NodeTag.Conversion => new Conversion(type, range, Expression()),
            NodeTag.LogicalOperation => new LogicalOperation(type, range, input.Flag(), Expression(), Expression()),
            NodeTag.Conditional => new Conditional(type, range, Expression(), OptionalExpression(), Expression()),
            NodeTag.Sequence => new Sequence(type, range, Expression(), Expression()),
            NodeTag.Load => new Load(type, range, Expression(), input.Flag(), BitField()),
            NodeTag.Assignment => Assignment(type, range),
            NodeTag.AddressOfVariable => new AddressOfVariable(type, range, AnyVariable()),
            NodeTag.AddressOfFunction => new AddressOfFunction(type, range, Symbol()),
            NodeTag.AddressOfLabel => new AddressOfLabel(type, range, input.Name()),
            NodeTag.PointerOffset => new PointerOffset(type, range, Expression(), Expression(), input.Signed()),
            NodeTag.PointerDifference => new PointerDifference(type, range, Expression(), Expression(), input.Signed()),
            NodeTag.InitializedTemporary => new InitializedTemporary(
                type,
                range,
                Local(),
                Initializer() ?? throw UnitInput.Broken()
            ),
            NodeTag.Call => new Call(type, range, Expression(), Expressions()),
            NodeTag.StatementExpression => new StatementExpression(
                type,
                range,
                (Block)Statement(),
                OptionalExpression()
            ),
            _ => throw UnitInput.Broken(),
        };

    private Assignment Assignment(CType type, SourceRange range)
    {
        var address = Expression();
        var value = Expression();
        var isVolatile = input.Flag();
        var bitField = BitField();
        var compound = input.Number();
        return new Assignment(
            type,
            range,
            address,
            value,
            isVolatile,
            bitField,
            compound == 0 ? null : Binary(compound - 1),
            OptionalType(),
            input.Signed(),
            input.Flag()
        );
    }

    private Expression[] Expressions()
    {
        var expressions = new Expression[input.Count()];
        for (var i = 0; i < expressions.Length; i++)
        {
            expressions[i] = Expression();
        }

        return expressions;
    }

    private UnaryOperator Unary()
    {
        var value = (UnaryOperator)input.Byte();
        return value <= UnaryOperator.LogicalNot ? value : throw UnitInput.Broken();
    }

    private static BinaryOperator Binary(int value) =>
        value is >= 0 and <= (int)BinaryOperator.GreaterOrEqual ? (BinaryOperator)value : throw UnitInput.Broken();
}
