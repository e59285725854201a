namespace PowerLint.Program;

/// <content>Statements.</content>
internal sealed partial class UnitLoader
{
    // More than the lowering lets through, so that bytes that are no unit's end before the stack does.
    private const int MaximumDepth = 40_000;

    private int _depth;

    private Statement Statement() => OptionalStatement() ?? throw UnitInput.Broken();

    private Statement? OptionalStatement()
    {
        var tag = (NodeTag)input.Byte();
        switch (tag)
        {
            case NodeTag.None:
                return null;
            case NodeTag.Again:
                return (Statement)_nodes[input.Number()];
            default:
                Enter();
                var statement = Statement(tag, Range());
                _depth--;
                _nodes.Add(statement);
                return statement;
        }
    }

    private Statement Statement(NodeTag tag, SourceRange range) =>
        tag switch
        {
            NodeTag.Block => new Block(range, Statements()),
            NodeTag.ExpressionStatement => new ExpressionStatement(range, Expression()),
            NodeTag.LocalDeclaration => new LocalDeclaration(range, Local(), Initializer())
            {
                Cleanup = input.Flag() ? Symbol() : null,
            },
            NodeTag.If => new If(range, Expression(), Statement(), OptionalStatement()),
            NodeTag.Loop => new Loop(range, OptionalExpression(), OptionalExpression(), Statement(), input.Flag()),
            NodeTag.Switch => new Switch(range, Expression(), Statement()),
            NodeTag.CaseLabel => new CaseLabel(range, Bound(), Bound(), Statement()),
            NodeTag.Label => new Label(range, input.Name(), Statement()),
            NodeTag.Goto => new Goto(range, input.Name()),
            NodeTag.ComputedGoto => new ComputedGoto(range, Expression()),
            NodeTag.Break => new Break(range),
            NodeTag.Continue => new Continue(range),
            NodeTag.Return => new Return(range, OptionalExpression()),
            NodeTag.UnknownEffect => new UnknownEffect(range, input.Name()),
            NodeTag.InlineAssembly => new InlineAssembly(range, input.Name(), Outputs(), Inputs(), Clobbers()),
            _ => throw UnitInput.Broken(),
        };

    private Statement[] Statements()
    {
        var statements = new Statement[input.Count()];
        for (var i = 0; i < statements.Length; i++)
        {
            statements[i] = Statement();
        }

        return statements;
    }

    private AssemblyOutput[] Outputs()
    {
        var operands = new AssemblyOutput[input.Count()];
        for (var i = 0; i < operands.Length; i++)
        {
            operands[i] = new AssemblyOutput(input.String(), input.Name(), Expression(), Type());
        }

        return operands;
    }

    private AssemblyInput[] Inputs()
    {
        var operands = new AssemblyInput[input.Count()];
        for (var i = 0; i < operands.Length; i++)
        {
            operands[i] = new AssemblyInput(input.String(), input.Name(), Expression());
        }

        return operands;
    }

    private string[] Clobbers()
    {
        var clobbers = new string[input.Count()];
        for (var i = 0; i < clobbers.Length; i++)
        {
            clobbers[i] = input.Name();
        }

        return clobbers;
    }

    private ulong? Bound() => input.Flag() ? input.Unsigned() : null;

    private void Enter()
    {
        if (++_depth > MaximumDepth)
        {
            throw UnitInput.Broken();
        }
    }
}
