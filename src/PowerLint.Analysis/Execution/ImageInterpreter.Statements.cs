using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    /// <summary>
    /// Executes a statement and gives the state that falls out of it. A null state enters only at labels that a jump or a switch
    /// is on its way to.
    /// </summary>
    private MachineState? Execute(Statement statement, MachineState? state)
    {
        if (state is null or { IsUnreachable: true })
        {
            if (_frame.Jumps.Count == 0 || !LabelsOf(_frame.Function).HoldsLabels(statement))
            {
                return null;
            }

            state = null;
        }

        Step();
        switch (statement)
        {
            case Block block:
                return ExecuteBlock(block, state);
            case ExpressionStatement { Expression: var expression }:
                if (!IsIntrinsicCall(expression))
                {
                    BeginInstruction(state!);
                }

                if (
                    expression is Assignment
                    {
                        Operator: null,
                        Address: AddressOfVariable { Variable: LocalVariable local }
                    } set
                )
                {
                    var outer = BeginSet();
                    Evaluate(set, state!);
                    EndSet(local, set.Range, state!, outer);
                }
                else
                {
                    Evaluate(expression, state!);
                }

                return LetHandlersIn(state!);
            case LocalDeclaration declaration:
                if (declaration.Initializer is null)
                {
                    Declare(declaration, state!);
                }
                else
                {
                    BeginInstruction(state!);
                    var around = BeginSet();
                    Declare(declaration, state!);
                    EndSet(declaration.Variable, declaration.Range, state!, around);
                }

                return LetHandlersIn(state!);
            case If branch:
                return ExecuteIf(branch, state);
            case Loop loop:
                return ExecuteLoop(loop, state);
            case Switch choice:
                return ExecuteSwitch(choice, state);
            case CaseLabel label:
                return Execute(label.Labelled, Join(state, TakeJump(label)));
            case Label label:
                return Execute(label.Labelled, Join(state, TakeJump(label.Name)));
            case Goto jump:
                SendJump(jump.Label, state!);
                return null;
            case ComputedGoto jump:
                ExecuteComputedGoto(jump, state!);
                return null;
            case Break:
                _scope.Broken = Join(_scope.Broken, state);
                return null;
            case Continue:
                _scope.Continued = Join(_scope.Continued, state);
                return null;
            case Return result:
                ExecuteReturn(result, state!);
                return null;
            case InlineAssembly assembly:
                return ExecuteAssembly(assembly, state!);
            case UnknownEffect unknown:
                NoteEffect(state!);
                AddUnknownCallee(state!, unknown.Reason);
                return state;
            default:
                throw new NotSupportedException($"Statement {statement.GetType().Name}");
        }
    }

    private MachineState? ExecuteBlock(Block block, MachineState? state)
    {
        var cleanups = block
            .Statements.OfType<LocalDeclaration>()
            .Where(declaration => declaration.Cleanup is not null)
            .Reverse()
            .ToArray();
        if (cleanups.Length > 0)
        {
            return ExecuteWithCleanup(block, cleanups, state);
        }

        return ExecuteWithBackwardJumps(block, state);
    }

    // A jump back to a label of this block goes round again; forward jumps are met on the way.
    private MachineState? ExecuteWithBackwardJumps(Block block, MachineState? state)
    {
        var result = ExecuteStatements(block.Statements, state);
        if (_frame.Jumps.Count == 0)
        {
            return result;
        }

        var labels = LabelsOf(_frame.Function);
        var seen = new Dictionary<string, LoopProgress>(StringComparer.Ordinal);
        while (true)
        {
            var back = _frame
                .Jumps.Keys.OfType<string>()
                .Where(name => labels.Holds(block, name))
                .Order(StringComparer.Ordinal)
                .ToArray();
            if (back.Length == 0)
            {
                foreach (var progress in seen.Values)
                {
                    CloseRun(progress.Run, wasLeft: result is not null || _frame.Returned is not null);
                }

                return result;
            }

            var isNew = false;
            foreach (var name in back)
            {
                if (!seen.TryGetValue(name, out var progress))
                {
                    progress = new LoopProgress(OpenRun(null, (Statement?)labels.Find(name) ?? block));
                    seen.Add(name, progress);
                }

                _frame.Jumps.Remove(name, out var arriving);
                if (NextHead(progress, arriving!, isOpen: true) is { } head)
                {
                    _frame.Jumps[name] = head;
                    isNew = true;
                }
            }

            if (isNew)
            {
                result = Join(result, ExecuteStatements(block.Statements, null));
            }
        }
    }

    private MachineState? ExecuteWithCleanup(Block block, LocalDeclaration[] cleanups, MachineState? state)
    {
        var (outerScope, outerReturned) = (_scope, _frame.Returned);
        var jumpsBefore = _frame.Jumps.ToArray();
        _scope = new JumpScope();
        _frame.Returned = null;
        var result = ExecuteWithBackwardJumps(block, state);
        var inner = _scope;
        var innerReturned = _frame.Returned;
        _scope = outerScope;
        result = Clean(result);
        _scope.Broken = Join(_scope.Broken, Clean(inner.Broken));
        _scope.Continued = Join(_scope.Continued, Clean(inner.Continued));
        _frame.Returned = null;
        var returned = Clean(innerReturned);
        _frame.Returned = Join(outerReturned, returned);
        foreach (var (label, jumping) in _frame.Jumps.ToArray())
        {
            if (
                !jumpsBefore.Any(j => Equals(j.Key, label) && ReferenceEquals(j.Value, jumping))
                && Clean(jumping) is { } cleaned
            )
            {
                _frame.Jumps[label] = cleaned;
            }
        }

        return result;

        MachineState? Clean(MachineState? leaving)
        {
            if (leaving is null)
            {
                return null;
            }

            var cleaned = leaving.Copy();
            foreach (var declaration in cleanups)
            {
                var address = AddressOf(declaration.Variable);
                if (_image.Resolve(declaration.Cleanup!) is { } body)
                {
                    CallFunction(body, [address], CleanupCall(declaration), cleaned);
                    if (LetHandlersIn(cleaned) is not { } next)
                    {
                        return null;
                    }

                    cleaned = next;
                }
            }

            return cleaned;
        }
    }

    private readonly Dictionary<LocalDeclaration, Call> _cleanupCalls = [];

    private Call CleanupCall(LocalDeclaration declaration)
    {
        if (!_cleanupCalls.TryGetValue(declaration, out var call))
        {
            var callee = new AddressOfFunction(new PointerType(16), declaration.Range, declaration.Cleanup!);
            call = new Call(VoidType.Instance, declaration.Range, callee, []);
            _cleanupCalls.Add(declaration, call);
        }

        return call;
    }

    private MachineState? ExecuteIf(If branch, MachineState? state)
    {
        var (then, otherwise) = ExecuteWays(branch, state);
        return Join(then, otherwise);
    }

    private (MachineState? Then, MachineState? Otherwise) ExecuteWays(If branch, MachineState? state)
    {
        MachineState? whenTrue = null;
        MachineState? whenFalse = null;
        if (state is not null)
        {
            (whenTrue, whenFalse) = Branch(branch.Condition, state);
            whenTrue = whenTrue is null ? null : LetHandlersIn(whenTrue);
            whenFalse = whenFalse is null ? null : LetHandlersIn(whenFalse);
        }

        var isOpen = whenTrue is not null && whenFalse is not null;
        OpenWays(isOpen, 1);
        var then = Execute(branch.Then, whenTrue);
        var otherwise = branch.Else is null ? whenFalse : Execute(branch.Else, whenFalse);
        OpenWays(isOpen, -1);
        return (then, otherwise);
    }

    private void ExecuteReturn(Return result, MachineState state)
    {
        if (result.Value is not null)
        {
            var value = Evaluate(result.Value, state);
            if (state.IsUnreachable)
            {
                return;
            }

            _frame.ReturnValue =
                _frame.ReturnValue is null || _frame.Returned is null
                    ? value
                    : AbstractValue.Join(_frame.ReturnValue, value);
        }

        _frame.Returned = Join(_frame.Returned, LetHandlersIn(state));
    }
}
