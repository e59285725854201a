using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    private const int MaximumCallDepth = 200;
    private const int MaximumRecursion = 12;

    // Functions that call each other several times over multiply: after this many recursive calls, only the first level of
    // recursion is followed.
    private const int MaximumRecursiveCalls = 5_000;

    private int _recursiveCalls;

    private AbstractValue EvaluateCall(Call call, MachineState state)
    {
        FunctionSymbol? direct = null;
        AbstractValue? callee = null;
        if (call.Callee is AddressOfFunction { Function: var symbol })
        {
            direct = symbol;
        }
        else
        {
            callee = Evaluate(call.Callee, state);
        }

        var arguments = new AbstractValue[call.Arguments.Count];
        for (var i = 0; i < arguments.Length; i++)
        {
            arguments[i] = Evaluate(call.Arguments[i], state);
        }

        if (state.IsUnreachable)
        {
            return AnyValue.Instance;
        }

        if (direct is not null)
        {
            return CallSymbol(direct, arguments, call, state);
        }

        var targets = callee is PointerValue pointer
            ? pointer.Targets.Where(t => t.Region.Function is not null).Select(t => t.Region.Function!).ToArray()
            : [];
        if (targets.Length == 0 && IsNull(callee))
        {
            // The way on is the reset vector on small parts, a fault on large ones: either way the call does not come back.
            Events.Limit(
                "null-call",
                "A function pointer that is null on this way is called: the program starts anew, and what follows the call is not run.",
                _frame.Chain.UserPlace(call.Range).Range,
                isIncomplete: false
            );
            state.IsUnreachable = true;
            return AnyValue.Instance;
        }

        if (targets.Length == 0)
        {
            CallUnknown("a call through a pointer that is not known", call, arguments, state);
            return UnknownOf(call.Type);
        }

        MachineState? after = null;
        AbstractValue? result = null;
        foreach (var target in targets)
        {
            var taken = state.Copy();
            if (targets.Length > 1 && call.Callee is Load { Address: var place } load && IsPure(place))
            {
                NarrowCallee(load, target, taken);
            }

            var value = CallSymbol(target, arguments, call, taken);
            if (!taken.IsUnreachable)
            {
                result = result is null ? value : AbstractValue.Join(result, value);
                after = Join(after, taken);
            }
        }

        state.Become(after);
        return result ?? AnyValue.Instance;
    }

    private static bool IsNull(AbstractValue? callee) => callee is IntegerValue { IsConstant: true, Minimum: 0 };

    // In the branch that calls one of several functions, the variable that was called holds that one.
    private void NarrowCallee(Load load, FunctionSymbol target, MachineState state)
    {
        if (
            Evaluate(load.Address, state) is PointerValue { Address: null, Targets: [var place] }
            && place.Offset.IsConstant
            && !place.Region.IsConstant
        )
        {
            _memory.Write(
                state,
                place.Region,
                (int)place.Offset.Minimum,
                (int)load.Type.SizeBytes,
                PointerValue.To(_regions.Of(target))
            );
        }
    }

    private AbstractValue CallSymbol(FunctionSymbol symbol, AbstractValue[] arguments, Call call, MachineState state)
    {
        if (_image.Resolve(symbol) is { } body)
        {
            return CallFunction(body, arguments, call, state);
        }

        if (CallIntrinsicAsInstruction(symbol.Name, arguments, call, state) is { } intrinsic)
        {
            return intrinsic;
        }

        if (CallLibrary(symbol.Name, arguments, call, state) is { } result)
        {
            return result;
        }

        if (symbol.IsNoReturn)
        {
            state.IsUnreachable = true;
            return AnyValue.Instance;
        }

        CallUnknown($"{symbol.Name}()", call, arguments, state);
        return UnknownOf(call.Type);
    }

    // A function without a body changes no register, but may have changed what it was given.
    private void CallUnknown(string name, Call call, AbstractValue[] arguments, MachineState state)
    {
        NoteEffect(state);
        AddUnknownCallee(state, name);
        Events.Limit(
            "function-without-body",
            $"{name} has no body in the sources given; it is taken to change no register. Add its source for certain findings.",
            _frame.Chain.UserPlace(call.Range).Range,
            isIncomplete: false
        );
        foreach (var argument in arguments)
        {
            Expose(argument, state);
        }
    }

    private void Expose(AbstractValue value, MachineState state)
    {
        if (value is PointerValue pointer)
        {
            foreach (var target in pointer.Targets.Where(t => t.Region.Function is null && t.Region.Label is null))
            {
                _memory.Blur(state, target.Region);
            }
        }
    }

    private AbstractValue CallFunction(Function function, AbstractValue[] arguments, Call call, MachineState state)
    {
        var chain = _frame.Chain;
        var active = chain.CountOf(function);
        _recursiveCalls += active > 0 ? 1 : 0;
        if (active >= (_recursiveCalls > MaximumRecursiveCalls ? 2 : MaximumRecursion))
        {
            CutCall(
                "recursion",
                $"{function.Name}() calls itself more than {MaximumRecursion} deep or too often; deeper calls are taken to change nothing.",
                function,
                arguments,
                state
            );
            return UnknownOf(function.ReturnType);
        }

        if (_frame.Depth % HandlerDepth >= MaximumCallDepth)
        {
            CutCall(
                "call-depth",
                $"{function.Name}() is called more than {MaximumCallDepth} calls deep; it is taken to change nothing.",
                function,
                arguments,
                state
            );
            return UnknownOf(function.ReturnType);
        }

        var (caller, scope, openBefore) = (_frame, _scope, _sawOpenCondition);
        var frame = new Frame(chain.Into(call, function, _chains), caller.Depth + 1);
        _scope = new JumpScope();
        var (after, value) = RunOrRepeat(frame, arguments, state);
        _frame = caller;
        _scope = scope;
        _sawOpenCondition |= openBefore;
        state.Become(after);
        return value;
    }

    private void CutCall(string id, string message, Function function, AbstractValue[] arguments, MachineState state)
    {
        NoteEffect(state);
        AddUnknownCallee(state, $"{function.Name}()");
        Events.Limit(id, message, function.Range, isIncomplete: true);
        foreach (var argument in arguments)
        {
            Expose(argument, state);
        }
    }

    /// <summary>Runs a function's body in a frame of its own and drops its locals.</summary>
    private (MachineState? State, AbstractValue Value) RunBody(
        Frame frame,
        AbstractValue[] arguments,
        MachineState state
    )
    {
        var function = frame.Function;
        var outer = _frame;
        _frame = frame;
        state = state.Copy();
        for (var i = 0; i < function.Parameters.Count; i++)
        {
            var parameter = function.Parameters[i];
            var region = _regions.Of(parameter, frame.Depth);
            frame.Locals.Add(region);
            MemoryModel.Drop(state, region);
            if (i >= arguments.Length)
            {
                continue;
            }

            if (parameter.Type is AggregateType aggregate)
            {
                StoreAggregate(region, 0, (arguments[i] as AggregateValue)?.Cells ?? [], aggregate.Bytes, state);
            }
            else
            {
                var width = (int)parameter.Type.SizeBytes;
                _memory.Write(state, region, 0, width, InMemory(arguments[i], width));
            }
        }

        if (function.IsVariadic)
        {
            PassVariadicArguments(
                frame,
                arguments.AsSpan(Math.Min(function.Parameters.Count, arguments.Length)),
                state
            );
        }

        var end = Execute(function.Body, state);
        DropStrayJumps();
        end = Join(frame.Returned, end);
        if (end is not null)
        {
            end = end.Copy();
            foreach (var region in frame.Locals)
            {
                MemoryModel.Drop(end, region);
            }
        }

        _frame = outer;
        return (end, frame.ReturnValue ?? AnyValue.Instance);
    }

    private void DropStrayJumps()
    {
        foreach (var label in _frame.Jumps.Keys.OfType<string>())
        {
            Events.Limit(
                "unknown-jump",
                $"A jump to label {label} in {_frame.Function.Name}() could not be followed; what it leads to is not checked.",
                _frame.Function.Range,
                isIncomplete: true
            );
        }

        _frame.Jumps.Clear();
    }
}
