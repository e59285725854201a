using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    // Set while a loop's pass is watched: whether a condition was left open, and the hardware bits read so far.
    private bool _sawOpenCondition;
    private readonly HashSet<(Devices.Register Register, ulong Mask)> _volatileReads = [];

    /// <summary>
    /// Evaluates a condition and gives the state in which it holds and the state in which it does not, each with what the
    /// outcome says of the variables that were looked at; null where the outcome cannot be.
    /// </summary>
    private (MachineState? WhenTrue, MachineState? WhenFalse) Branch(Expression condition, MachineState state)
    {
        Step();
        if (!IsConstant(condition))
        {
            BeginInstruction(state);
        }

        switch (condition)
        {
            case UnaryOperation { Operator: UnaryOperator.LogicalNot } not:
                var (isTrue, isFalse) = Branch(not.Operand, state);
                return (isFalse, isTrue);
            case LogicalOperation { IsAnd: true } and:
            {
                var (leftTrue, leftFalse) = Branch(and.Left, state);
                if (leftTrue is null)
                {
                    return (null, leftFalse);
                }

                var (rightTrue, rightFalse) = Branch(and.Right, leftTrue);
                return (rightTrue, Join(leftFalse, rightFalse));
            }

            case LogicalOperation or:
            {
                var (leftTrue, leftFalse) = Branch(or.Left, state);
                if (leftFalse is null)
                {
                    return (leftTrue, null);
                }

                var (rightTrue, rightFalse) = Branch(or.Right, leftFalse);
                return (Join(leftTrue, rightTrue), rightFalse);
            }

            case BinaryOperation comparison when IntegerComparison.IsComparison(comparison.Operator):
                return BranchWatched(comparison, state);
            case Conversion { Type: IntegerType { Bits: 1 } } conversion:
                return Branch(conversion.Operand, state);
            case Conversion { Type: IntegerType to, Operand.Type: IntegerType from } widening when to.Bits >= from.Bits:
                return Branch(widening.Operand, state);
            default:
                return BranchWatched(condition, state);
        }
    }

    private (MachineState? WhenTrue, MachineState? WhenFalse) BranchOnValue(Expression condition, MachineState state)
    {
        var value = Evaluate(condition, state);
        switch (value.IsTrue)
        {
            case var _ when state.IsUnreachable:
                return (null, null);
            case Tristate.Yes:
                return (state, null);
            case Tristate.No:
                return (null, state);
        }

        _sawOpenCondition = true;
        var zero = IntegerValue.Constant(BitsOf(condition.Type), 0);
        var otherwise = state.Copy();
        var whenTrue = value is IntegerValue integer
            ? IntegerComparison.Refine(BinaryOperator.NotEqual, integer, zero, isSigned: false) is { } notZero
                && Refine(condition, notZero, state)
            : RefinePointer(condition, isNull: false, state);
        var whenFalse =
            value is IntegerValue
                ? Refine(condition, zero, otherwise)
                : RefinePointer(condition, isNull: true, otherwise);
        return (whenTrue ? state : null, whenFalse ? otherwise : null);
    }

    private (MachineState? WhenTrue, MachineState? WhenFalse) BranchOnComparison(
        BinaryOperation comparison,
        MachineState state
    )
    {
        AbstractValue left;
        AbstractValue right;
        left = Evaluate(comparison.Left, state);
        right = Evaluate(comparison.Right, state);
        if (state.IsUnreachable)
        {
            return (null, null);
        }

        switch (Compare(comparison.Operator, left, right, comparison.Left.Type))
        {
            case Tristate.Yes:
                return (state, null);
            case Tristate.No:
                return (null, state);
        }

        _sawOpenCondition = true;
        var otherwise = state.Copy();
        if (left is PointerValue && right is IntegerValue { Maximum: 0 })
        {
            var isEqual = comparison.Operator == BinaryOperator.Equal;
            if (isEqual || comparison.Operator == BinaryOperator.NotEqual)
            {
                return (
                    RefinePointer(comparison.Left, isNull: isEqual, state) ? state : null,
                    RefinePointer(comparison.Left, isNull: !isEqual, otherwise) ? otherwise : null
                );
            }
        }

        if (left is not IntegerValue a || right is not IntegerValue b || a.Bits != b.Bits)
        {
            return (state, otherwise);
        }

        var isSigned = IsSigned(comparison.Left.Type);
        return (
            RefineBoth(comparison.Operator, state) ? state : null,
            RefineBoth(IntegerComparison.Negate(comparison.Operator), otherwise) ? otherwise : null
        );

        bool RefineBoth(BinaryOperator @operator, MachineState refined)
        {
            var newLeft = IntegerComparison.Refine(@operator, a, b, isSigned);
            var newRight = IntegerComparison.Refine(IntegerComparison.Swap(@operator), b, a, isSigned);
            return newLeft is not null
                && newRight is not null
                && (ReferenceEquals(newLeft, a) || Refine(comparison.Left, newLeft, refined))
                && (ReferenceEquals(newRight, b) || Refine(comparison.Right, newRight, refined));
        }
    }

    /// <summary>
    /// Narrows what an expression was computed from, given what it turned out to be. False where no state allows that. The
    /// expression has just been evaluated in the state; nothing is evaluated again that has an effect.
    /// </summary>
    private bool Refine(Expression expression, IntegerValue value, MachineState state)
    {
        switch (expression)
        {
            case Load { BitField: null } load:
                return RefineObject(load.Address, load.Type, value, state);
            case Assignment { BitField: null, YieldsOldValue: false, Type: IntegerType } assignment:
                return RefineObject(assignment.Address, assignment.Type, value, state);
            case Assignment
            {
                BitField: null,
                YieldsOldValue: true,
                Type: IntegerType,
                Operator: BinaryOperator.Add or BinaryOperator.Subtract,
                PointerScaleBytes: 0,
                Value: IntegerConstant step,
            } postfix:
                var moved = IntegerArithmetic.Apply(
                    postfix.Operator.Value,
                    value,
                    IntegerValue.Constant(value.Bits, step.Value),
                    isSigned: false
                );
                return RefineObject(postfix.Address, postfix.Type, moved, state);
            case Sequence sequence:
                return Refine(sequence.Second, value, state);
            case Conversion { Type: IntegerType to, Operand: { Type: IntegerType from } operand }:
                return RefineConversion(operand, from, to, value, state);
            case UnaryOperation { Operator: UnaryOperator.Complement } complement:
                return Refine(complement.Operand, IntegerArithmetic.Complement(value), state);
            case BinaryOperation { Right: IntegerConstant constant, Type: IntegerType type } operation:
                return RefineOperation(operation.Operator, operation.Left, constant.Value, type, value, state);
            case BinaryOperation
            {
                Left: IntegerConstant constant,
                Operator: BinaryOperator.And or BinaryOperator.Or or BinaryOperator.Xor or BinaryOperator.Add,
                Type: IntegerType type,
            } operation:
                return RefineOperation(operation.Operator, operation.Right, constant.Value, type, value, state);
            case BinaryOperation
            {
                Right: Conversion { Operand: IntegerConstant } or BinaryOperation,
                Type: IntegerType type
            } operation
                when IsConstant(operation.Right)
                    && Evaluate(operation.Right, state) is IntegerValue { IsConstant: true } folded:
                return RefineOperation(operation.Operator, operation.Left, folded.Minimum, type, value, state);
            case BinaryOperation { Operator: var @operator } comparison when IntegerComparison.IsComparison(@operator):
                return true;
            default:
                return true;
        }
    }

    private bool RefineConversion(
        Expression operand,
        IntegerType from,
        IntegerType to,
        IntegerValue value,
        MachineState state
    )
    {
        if (to.Bits == 1)
        {
            return true;
        }

        if (to.Bits >= from.Bits)
        {
            // Only values that a widening of the operand can give: cut down, then check that nothing else was asked for.
            var narrow = IntegerArithmetic.Convert(value, from.Bits, sourceIsSigned: false);
            return Refine(operand, narrow, state);
        }

        return Refine(operand, IntegerValue.Reduce(from.Bits, value.Known, value.Value, 0, ulong.MaxValue)!, state);
    }

    private bool RefineOperation(
        BinaryOperator @operator,
        Expression operand,
        ulong constant,
        IntegerType type,
        IntegerValue value,
        MachineState state
    )
    {
        var bits = type.Bits;
        var mask = IntegerValue.MaskOf(bits);
        constant &= mask;
        IntegerValue? back;
        switch (@operator)
        {
            case BinaryOperator.And:
                if ((value.Value & ~constant) != 0)
                {
                    return false;
                }

                back = IntegerValue.Reduce(bits, value.Known & constant, value.Value & constant, value.Minimum, mask);
                break;
            case BinaryOperator.Or:
                if ((constant & value.Known & ~value.Value) != 0)
                {
                    return false;
                }

                back = IntegerValue.Reduce(bits, value.Known & ~constant, value.Value & ~constant, 0, value.Maximum);
                break;
            case BinaryOperator.Xor:
                back = IntegerArithmetic.Apply(
                    @operator,
                    value,
                    IntegerValue.Constant(bits, constant),
                    isSigned: false
                );
                break;
            case BinaryOperator.Add:
                back = IntegerArithmetic.Apply(
                    BinaryOperator.Subtract,
                    value,
                    IntegerValue.Constant(bits, constant),
                    isSigned: false
                );
                break;
            case BinaryOperator.Subtract:
                back = IntegerArithmetic.Apply(
                    BinaryOperator.Add,
                    value,
                    IntegerValue.Constant(bits, constant),
                    isSigned: false
                );
                break;
            case BinaryOperator.ShiftRight when constant < (ulong)bits && !type.IsSigned:
                back = IntegerValue.Reduce(
                    bits,
                    value.Known << (int)constant,
                    (value.Value << (int)constant) & mask,
                    0,
                    mask
                );
                break;
            case BinaryOperator.ShiftLeft when constant < (ulong)bits:
                var upper = mask & ~(mask << (int)constant) << 0;
                back = IntegerValue.Reduce(
                    bits,
                    (value.Known & ~upper) >> (int)constant & (mask >> (int)constant),
                    value.Value >> (int)constant,
                    0,
                    mask
                );
                break;
            default:
                return true;
        }

        return back is not null && Refine(operand, back, state);
    }

    // Addresses are evaluated again, which is free of effects for the places that firmware tests: variables and members.
    private bool RefineObject(Expression address, CType type, IntegerValue value, MachineState state)
    {
        if (!IsPure(address) || type is not IntegerType integerType)
        {
            return true;
        }

        var place = Evaluate(address, state);
        var width = (int)type.SizeBytes;
        if (
            place is PointerValue { Address: null, Targets: [var target] }
            && target.Offset.IsConstant
            && !(target.Region.IsConstant)
        )
        {
            var offset = (int)target.Offset.Minimum;
            var current = Typed(_memory.Read(state, target.Region, offset, width), type);
            if (current is not IntegerValue old)
            {
                return true;
            }

            var met = IntegerValue.Meet(old, value);
            if (met is null)
            {
                return false;
            }

            if (!ReferenceEquals(met, old))
            {
                _memory.Write(state, target.Region, offset, width, InMemory(met, width));
                if (!IsInHandler && _handlerRegions.Contains(target.Region))
                {
                    // A handler may change it again right after the test.
                    state.NeedsInterleaving = true;
                }
            }

            return true;
        }

        if (place is IntegerValue { IsConstant: true } absolute && integerType.Bits == 8 * width)
        {
            // What the program has set in a register stays set; what hardware changes may be different at the next look.
            var now = _registers.Peek(state, absolute.Minimum, width);
            return ((now.Value ^ value.Value) & now.Known & value.Known) == 0;
        }

        return true;
    }

    private static bool IsPure(Expression expression) =>
        expression switch
        {
            AddressOfVariable or IntegerConstant => true,
            PointerOffset offset => IsPure(offset.Pointer) && IsPure(offset.Index),
            Conversion conversion => IsPure(conversion.Operand),
            Load { IsVolatile: false } load => IsPure(load.Address),
            BinaryOperation operation => IsPure(operation.Left) && IsPure(operation.Right),
            _ => false,
        };

    private bool RefinePointer(Expression expression, bool isNull, MachineState state)
    {
        if (expression is not Load load || !IsPure(load.Address) || load.Type is not PointerType)
        {
            return true;
        }

        if (
            Evaluate(load.Address, state) is not PointerValue { Address: null, Targets: [var target] }
            || !target.Offset.IsConstant
        )
        {
            return true;
        }

        var offset = (int)target.Offset.Minimum;
        var width = (int)load.Type.SizeBytes;
        if (_memory.Read(state, target.Region, offset, width) is not PointerValue pointer)
        {
            return true;
        }

        AbstractValue? narrowed = isNull
            ? pointer.Address is null
                ? null
                : IntegerValue.Constant(8 * width, 0)
            : pointer.Where(
                _ => true,
                pointer.Address is { Exact: not null } a
                    ? a.Where(v => v != 0) is { Maximum: > 0 } rest
                        ? rest
                        : null
                    : pointer.Address
            );
        if (narrowed is null)
        {
            return false;
        }

        _memory.Write(state, target.Region, offset, width, narrowed);
        return true;
    }
}
