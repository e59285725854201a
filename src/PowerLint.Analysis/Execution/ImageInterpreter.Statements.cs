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
                Evaluate(expression, state!);
                return LetHandlersIn(state!);
            case LocalDeclaration declaration:
                Declare(declaration, state!);
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
                _effects++;
                AddUnknownCallee(state!, unknown.Reason);
                return state;
            default:
                throw new NotSupportedException($"Statement {statement.GetType().Name}");
        }
    }

    private MachineState? ExecuteStatements(IReadOnlyList<Statement> statements, MachineState? state)
    {
        foreach (var statement in statements)
        {
            if (state is null or { IsUnreachable: true } && _frame.Jumps.Count == 0)
            {
                return null;
            }

            state = Execute(statement, state);
        }

        return state is { IsUnreachable: true } ? null : state;
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
        MachineState? whenTrue = null;
        MachineState? whenFalse = null;
        if (state is not null)
        {
            (whenTrue, whenFalse) = Branch(branch.Condition, state);
            whenTrue = whenTrue is null ? null : LetHandlersIn(whenTrue);
            whenFalse = whenFalse is null ? null : LetHandlersIn(whenFalse);
        }

        var then = Execute(branch.Then, whenTrue);
        var otherwise = branch.Else is null ? whenFalse : Execute(branch.Else, whenFalse);
        return Join(then, otherwise);
    }

    private MachineState? ExecuteSwitch(Switch choice, MachineState? state)
    {
        var outer = _scope;
        _scope = new JumpScope { Continued = outer.Continued };
        if (state is not null)
        {
            var value = Evaluate(choice.Value, state);
            state = LetHandlersIn(state);
            if (state is not null)
            {
                SendCases(choice, value, state);
            }
        }

        var end = Execute(choice.Body, null);
        end = Join(end, _scope.Broken);
        outer.Continued = _scope.Continued;
        _scope = outer;
        return end;
    }

    private void SendCases(Switch choice, AbstractValue value, MachineState state)
    {
        var bits = BitsOf(choice.Value.Type);
        var isSigned = IsSigned(choice.Value.Type);
        var rest = value as IntegerValue ?? IntegerValue.Unknown(bits);
        CaseLabel? fallback = null;
        var cases = LabelsOf(_frame.Function).CasesOf(choice);
        IntegerValue? left = rest;
        foreach (var label in cases)
        {
            if (label.Low is not { } low)
            {
                fallback = label;
                continue;
            }

            if (left is null)
            {
                continue;
            }

            var from = IntegerValue.Constant(bits, low);
            var to = IntegerValue.Constant(bits, label.High ?? low);
            var inside = IntegerComparison.Refine(BinaryOperator.GreaterOrEqual, left, from, isSigned);
            inside = inside is null ? null : IntegerComparison.Refine(BinaryOperator.LessOrEqual, inside, to, isSigned);
            if (inside is null)
            {
                continue;
            }

            var taken = state.Copy();
            if (ReferenceEquals(inside, rest) || Refine(choice.Value, inside, taken))
            {
                _frame.Jumps[label] = taken;
            }

            left = Without(left, from, to, isSigned);
        }

        if (left is null)
        {
            return;
        }

        _sawOpenCondition |= !ReferenceEquals(left, rest);
        if (!ReferenceEquals(left, rest) && !Refine(choice.Value, left, state))
        {
            return;
        }

        if (fallback is not null)
        {
            _frame.Jumps[fallback] = state;
        }
        else
        {
            _scope.Broken = Join(_scope.Broken, state);
        }
    }

    private static IntegerValue? Without(IntegerValue value, IntegerValue from, IntegerValue to, bool isSigned)
    {
        if (value.Exact is not null)
        {
            return value.Where(v =>
                !IntegerComparison.Concrete(BinaryOperator.GreaterOrEqual, v, from.Minimum, value.Bits, isSigned)
                || !IntegerComparison.Concrete(BinaryOperator.LessOrEqual, v, to.Minimum, value.Bits, isSigned)
            );
        }

        return from.Minimum == to.Minimum
            ? IntegerComparison.Refine(BinaryOperator.NotEqual, value, from, isSigned)
            : value;
    }

    private MachineState? TakeJump(object label) => _frame.Jumps.Remove(label, out var state) ? state : null;

    private void SendJump(string label, MachineState state) =>
        _frame.Jumps[label] = Join(_frame.Jumps.GetValueOrDefault(label), state)!;

    private void ExecuteComputedGoto(ComputedGoto jump, MachineState state)
    {
        if (Evaluate(jump.Target, state) is PointerValue { Address: null } target)
        {
            foreach (var place in target.Targets.Where(t => t.Region.Label is not null))
            {
                SendJump(place.Region.Label!, state.Copy());
            }

            return;
        }

        Events.Limit(
            "unknown-jump",
            "A computed goto jumps to a label that is not known; what follows it is not checked.",
            jump.Range,
            isIncomplete: true
        );
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

    private void Declare(LocalDeclaration declaration, MachineState state)
    {
        var region = _regions.Of(declaration.Variable, _frame.Depth);
        _frame.Locals.Add(region);
        if (declaration.Initializer is { } initializer)
        {
            Initialize(region, initializer, state);
        }
        else
        {
            MemoryModel.Drop(state, region);
        }
    }

    private void Initialize(Region region, Initializer initializer, MachineState state)
    {
        _frame.Locals.Add(region);

        // The initialiser of a variable may read its old value only by mistake; a loop that comes round starts it afresh.
        var values = new List<(ValueEntry Entry, AbstractValue Value)>();
        foreach (var entry in initializer.Entries.OfType<ValueEntry>())
        {
            values.Add((entry, Evaluate(entry.Value, state)));
        }

        if (
            initializer.Entries is [ValueEntry { OffsetBytes: 0, BitField: null } only]
            && only.Value.Type.SizeBytes == region.SizeBytes
            && only.Value.Type is not AggregateType
        )
        {
            _memory.Write(state, region, 0, (int)region.SizeBytes, InMemory(values[0].Value, (int)region.SizeBytes));
            return;
        }

        MemoryModel.Clear(state, region);
        var next = 0;
        foreach (var entry in initializer.Entries)
        {
            if (entry is BytesEntry bytes)
            {
                WriteBytes(region, bytes, state);
            }
            else
            {
                WriteEntry(region, values[next].Entry, values[next].Value, state);
                next++;
            }
        }
    }

    private void WriteBytes(Region region, BytesEntry entry, MachineState state)
    {
        for (var i = 0; i + entry.ElementBytes <= entry.Bytes.Length; i += entry.ElementBytes)
        {
            ulong value = 0;
            for (var j = 0; j < entry.ElementBytes; j++)
            {
                value |= (ulong)entry.Bytes[i + j] << (8 * j);
            }

            _memory.Write(
                state,
                region,
                entry.OffsetBytes + i,
                entry.ElementBytes,
                IntegerValue.Constant(8 * entry.ElementBytes, value)
            );
        }
    }

    private void WriteEntry(Region region, ValueEntry entry, AbstractValue value, MachineState state)
    {
        if (entry.Value.Type is AggregateType aggregate)
        {
            StoreAggregate(region, entry.OffsetBytes, (value as AggregateValue)?.Cells ?? [], aggregate.Bytes, state);
            return;
        }

        if (entry.BitField is { } field)
        {
            var width = field.StorageBits / 8;
            var old =
                _memory.Read(state, region, entry.OffsetBytes, width) as IntegerValue
                ?? IntegerValue.Unknown(8 * width);
            var mask = IntegerValue.MaskOf(field.BitWidth) << field.BitOffset;
            var part = value as IntegerValue ?? IntegerValue.Unknown(field.BitWidth);
            part = IntegerArithmetic.Convert(IntegerArithmetic.LowBits(part, field.BitWidth), 8 * width, false);
            var shifted = IntegerArithmetic.Apply(
                BinaryOperator.ShiftLeft,
                part,
                IntegerValue.Constant(8 * width, (ulong)field.BitOffset),
                isSigned: false
            );
            var kept = IntegerArithmetic.Apply(
                BinaryOperator.And,
                old,
                IntegerValue.Constant(8 * width, ~mask),
                isSigned: false
            );
            _memory.Write(
                state,
                region,
                entry.OffsetBytes,
                width,
                IntegerArithmetic.Apply(BinaryOperator.Or, kept, shifted, isSigned: false)
            );
            return;
        }

        var size = (int)entry.Value.Type.SizeBytes;
        _memory.Write(state, region, entry.OffsetBytes, size, InMemory(value, size));
    }

    // What start-up code puts into a global: evaluated once, in no state that matters.
    private void FillInitialContents(Region region, Initializer initializer)
    {
        var size = Math.Max(
            region.SizeBytes,
            initializer.Entries.OfType<BytesEntry>().Select(e => e.OffsetBytes + e.Bytes.Length).DefaultIfEmpty().Max()
        );
        var contents = new InitialContents(new byte[size]);
        region.Initial = contents;
        var state = new MachineState
        {
            Memory = PersistentMap<MemoryCell>.Empty,
            Registers = PersistentMap<RegisterByte>.Empty,
        };
        foreach (var entry in initializer.Entries)
        {
            switch (entry)
            {
                case BytesEntry bytes:
                    bytes.Bytes.CopyTo(contents.Bytes, bytes.OffsetBytes);
                    break;
                case ValueEntry { Value.Type: AggregateType } aggregate:
                    if (Evaluate(aggregate.Value, state) is AggregateValue value)
                    {
                        foreach (var (offset, cell) in value.Cells)
                        {
                            FillScalar(contents, aggregate.OffsetBytes + offset, cell.WidthBytes, cell.Value);
                        }
                    }

                    break;
                case ValueEntry { BitField: { } field } part:
                    FillField(contents, part.OffsetBytes, field, Evaluate(part.Value, state));
                    break;
                case ValueEntry scalar:
                    var width = (int)scalar.Value.Type.SizeBytes;
                    FillScalar(contents, scalar.OffsetBytes, width, InMemory(Evaluate(scalar.Value, state), width));
                    break;
            }
        }
    }

    private static void FillScalar(InitialContents contents, long offset, int width, AbstractValue value)
    {
        if (value is not IntegerValue { IsConstant: true } constant)
        {
            contents.SetCell(offset, new MemoryCell(width, value));
            return;
        }

        for (var i = 0; i < width && offset + i < contents.Bytes.Length; i++)
        {
            contents.Bytes[offset + i] = (byte)(constant.Minimum >> (8 * i));
        }
    }

    private static void FillField(InitialContents contents, long offset, BitField field, AbstractValue value)
    {
        var bits = value is IntegerValue { IsConstant: true } constant ? constant.Minimum : 0;
        for (var i = 0; i < field.BitWidth; i++)
        {
            var at = field.BitOffset + i;
            var mask = (byte)(1 << (at % 8));
            ref var target = ref contents.Bytes[offset + (at / 8)];
            target = (byte)(((bits >> i) & 1) != 0 ? target | mask : target & ~mask);
        }
    }
}
