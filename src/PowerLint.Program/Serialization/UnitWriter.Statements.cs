namespace PowerLint.Program;

/// <content>Statements.</content>
internal sealed partial class UnitWriter
{
    private void Statement(Statement? statement)
    {
        if (statement is null)
        {
            Tag(NodeTag.None);
            return;
        }

        if (IsAgain(statement))
        {
            return;
        }

        switch (statement)
        {
            case Block block:
                Start(NodeTag.Block, block);
                output.Count(block.Statements.Count);
                foreach (var inner in block.Statements)
                {
                    Statement(inner);
                }

                break;
            case ExpressionStatement expression:
                Start(NodeTag.ExpressionStatement, expression);
                Expression(expression.Expression);
                break;
            case LocalDeclaration declaration:
                Start(NodeTag.LocalDeclaration, declaration);
                Local(declaration.Variable);
                Initializer(declaration.Initializer);
                output.Flag(declaration.Cleanup is not null);
                if (declaration.Cleanup is { } cleanup)
                {
                    Symbol(cleanup);
                }

                break;
            case If branch:
                Start(NodeTag.If, branch);
                Expression(branch.Condition);
                Statement(branch.Then);
                Statement(branch.Else);
                break;
            case Loop loop:
                Start(NodeTag.Loop, loop);
                Expression(loop.Condition);
                Expression(loop.Step);
                Statement(loop.Body);
                output.Flag(loop.TestsAfterBody);
                break;
            case Switch selection:
                Start(NodeTag.Switch, selection);
                Expression(selection.Value);
                Statement(selection.Body);
                break;
            case CaseLabel label:
                Start(NodeTag.CaseLabel, label);
                Bound(label.Low);
                Bound(label.High);
                Statement(label.Labelled);
                break;
            case Label label:
                Start(NodeTag.Label, label);
                output.String(label.Name);
                Statement(label.Labelled);
                break;
            case Goto jump:
                Start(NodeTag.Goto, jump);
                output.String(jump.Label);
                break;
            case ComputedGoto jump:
                Start(NodeTag.ComputedGoto, jump);
                Expression(jump.Target);
                break;
            case Break:
                Start(NodeTag.Break, statement);
                break;
            case Continue:
                Start(NodeTag.Continue, statement);
                break;
            case Return result:
                Start(NodeTag.Return, result);
                Expression(result.Value);
                break;
            case UnknownEffect unknown:
                Start(NodeTag.UnknownEffect, unknown);
                output.String(unknown.Reason);
                break;
            case InlineAssembly assembly:
                Start(NodeTag.InlineAssembly, assembly);
                Assembly(assembly);
                break;
            default:
                throw new NotSupportedException(statement.GetType().Name);
        }

        _nodes.Add(statement, _nodes.Count);
    }

    private void Assembly(InlineAssembly assembly)
    {
        output.String(assembly.Template);
        output.Count(assembly.Outputs.Count);
        foreach (var operand in assembly.Outputs)
        {
            output.String(operand.Name);
            output.String(operand.Constraint);
            Expression(operand.Address);
            Type(operand.ObjectType);
        }

        output.Count(assembly.Inputs.Count);
        foreach (var operand in assembly.Inputs)
        {
            output.String(operand.Name);
            output.String(operand.Constraint);
            Expression(operand.Value);
        }

        output.Count(assembly.Clobbers.Count);
        foreach (var clobber in assembly.Clobbers)
        {
            output.String(clobber);
        }
    }

    private void Bound(ulong? bound)
    {
        output.Flag(bound is not null);
        if (bound is { } value)
        {
            output.Unsigned(value);
        }
    }

    private void Start(NodeTag tag, Statement statement)
    {
        Tag(tag);
        Range(statement.Range);
    }

    private void Tag(NodeTag tag) => output.Byte((byte)tag);

    // A node that stands in two places is one node: the analysis tells nodes apart by identity.
    private bool IsAgain(object node)
    {
        if (!_nodes.TryGetValue(node, out var number))
        {
            return false;
        }

        Tag(NodeTag.Again);
        output.Count(number);
        return true;
    }
}
