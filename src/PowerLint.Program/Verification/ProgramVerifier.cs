namespace PowerLint.Program;

/// <summary>
/// Checks that a unit is well formed: operand types agree, jumps have targets, locals are declared, bit-fields lie in their
/// units. Run in every test and over the corpus, so that a mistake of the lowering is found where it is made.
/// </summary>
public sealed class ProgramVerifier
{
    private readonly List<ProgramDefect> _defects = [];
    private readonly HashSet<LocalVariable> _declared = [];
    private readonly HashSet<string> _labels = new(StringComparer.Ordinal);
    private readonly List<(string Label, SourceRange Range)> _jumps = [];
    private readonly List<(LocalVariable Variable, SourceRange Range)> _uses = [];
    private readonly ExpressionVerifier _expressions;
    private string _where = "";
    private CType _returnType = VoidType.Instance;
    private int _loops;
    private int _switches;

    private ProgramVerifier() => _expressions = new ExpressionVerifier(this);

    /// <summary>The defects of a unit, in order; none where it is well formed.</summary>
    public static IReadOnlyList<ProgramDefect> Verify(TranslationUnit unit)
    {
        var verifier = new ProgramVerifier();
        foreach (var global in unit.Globals)
        {
            verifier.VerifyGlobal(global);
        }

        foreach (var function in unit.Functions)
        {
            verifier.VerifyFunction(function);
        }

        return verifier._defects;
    }

    internal void Report(SourceRange range, string message) => _defects.Add(new ProgramDefect(_where, range, message));

    internal void Declare(LocalVariable variable) => _declared.Add(variable);

    internal void Use(LocalVariable variable, SourceRange range) => _uses.Add((variable, range));

    internal void Jump(string label, SourceRange range) => _jumps.Add((label, range));

    internal void VerifyStatement(Statement statement)
    {
        switch (statement)
        {
            case Block block:
                foreach (var inner in block.Statements)
                {
                    VerifyStatement(inner);
                }

                break;
            case ExpressionStatement expression:
                _expressions.Verify(expression.Expression);
                break;
            case LocalDeclaration declaration:
                if (!_declared.Add(declaration.Variable))
                {
                    Report(declaration.Range, $"{declaration.Variable.Name} is declared twice");
                }

                if (declaration.Initializer is { } initializer)
                {
                    _expressions.Verify(initializer, declaration.Range);
                }

                break;
            case If branch:
                _expressions.VerifyScalar(branch.Condition, "condition");
                VerifyStatement(branch.Then);
                if (branch.Else is { } otherwise)
                {
                    VerifyStatement(otherwise);
                }

                break;
            case Loop loop:
                VerifyLoop(loop);
                break;
            case Switch @switch:
                VerifySwitch(@switch);
                break;
            case CaseLabel label:
                Require(_switches > 0, label.Range, "case label outside a switch");
                Require(label.Low is null == label.High is null, label.Range, "case label with one end");
                VerifyStatement(label.Labelled);
                break;
            case Label label:
                Require(_labels.Add(label.Name), label.Range, $"label {label.Name} stands twice");
                VerifyStatement(label.Labelled);
                break;
            default:
                VerifyJump(statement);
                break;
        }
    }

    internal void Require(bool condition, SourceRange range, string message)
    {
        if (!condition)
        {
            Report(range, message);
        }
    }

    private void VerifyJump(Statement statement)
    {
        switch (statement)
        {
            case Goto jump:
                Jump(jump.Label, jump.Range);
                break;
            case ComputedGoto jump:
                _expressions.VerifyPointer(jump.Target, "jump target");
                break;
            case Break:
                Require(_loops + _switches > 0, statement.Range, "break outside a loop or switch");
                break;
            case Continue:
                Require(_loops > 0, statement.Range, "continue outside a loop");
                break;
            case Return result:
                VerifyReturn(result);
                break;
            case InlineAssembly assembly:
                VerifyAssembly(assembly);
                break;
            case UnknownEffect:
                break;
            default:
                Report(statement.Range, $"statement of unknown kind {statement.GetType().Name}");
                break;
        }
    }

    private void VerifyLoop(Loop loop)
    {
        if (loop.Condition is { } condition)
        {
            _expressions.VerifyScalar(condition, "condition");
        }

        if (loop.Step is { } step)
        {
            _expressions.Verify(step);
        }

        _loops++;
        VerifyStatement(loop.Body);
        _loops--;
    }

    private void VerifySwitch(Switch @switch)
    {
        _expressions.Verify(@switch.Value);
        Require(@switch.Value.Type is IntegerType, @switch.Range, "switch on a value that is no integer");
        _switches++;
        VerifyStatement(@switch.Body);
        _switches--;
    }

    private void VerifyReturn(Return result)
    {
        if (result.Value is { } value)
        {
            _expressions.Verify(value);
            Require(value.Type == _returnType, result.Range, $"returns {value.Type} as {_returnType}");
        }
    }

    private void VerifyAssembly(InlineAssembly assembly)
    {
        foreach (var output in assembly.Outputs)
        {
            _expressions.VerifyPointer(output.Address, "assembly output");
        }

        foreach (var input in assembly.Inputs)
        {
            _expressions.Verify(input.Value);
        }
    }

    private void VerifyGlobal(GlobalVariable global)
    {
        _where = global.Name;
        if (global.Initializer is { } initializer)
        {
            _expressions.Verify(initializer, global.Range);
        }
    }

    private void VerifyFunction(Function function)
    {
        _where = function.Name;
        _returnType = function.ReturnType;
        _declared.Clear();
        _labels.Clear();
        _jumps.Clear();
        _uses.Clear();
        _declared.UnionWith(function.Parameters);
        VerifyStatement(function.Body);
        foreach (var (label, range) in _jumps.Where(jump => !_labels.Contains(jump.Label)))
        {
            Report(range, $"no label {label}");
        }

        foreach (var (variable, range) in _uses.Where(use => !_declared.Contains(use.Variable)))
        {
            Report(range, $"{variable.Name} is not declared");
        }
    }
}
