using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
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

        var isOpen = _frame.Jumps.Count > 1;
        OpenWays(isOpen, 1);
        var end = Execute(choice.Body, null);
        OpenWays(isOpen, -1);
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
}
