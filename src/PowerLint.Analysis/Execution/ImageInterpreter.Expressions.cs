using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    /// <summary>
    /// Evaluates an expression and carries out its effects on the state. <paramref name="demanded"/> has the bits of the result
    /// that matter: it tells which bits of an input register the program looks at.
    /// </summary>
    private AbstractValue Evaluate(Expression expression, MachineState state, ulong demanded = ulong.MaxValue)
    {
        Step();
        if (state.IsUnreachable)
        {
            return AnyValue.Instance;
        }

        switch (expression)
        {
            case IntegerConstant constant:
                return IntegerValue.Constant(BitsOf(constant.Type), constant.Value);
            case FloatingConstant constant:
                return new FloatingValue(constant.Value);
            case AddressOfVariable address:
                return AddressOf(address.Variable);
            case AddressOfFunction address:
                return PointerValue.To(_regions.Of(address.Function));
            case AddressOfLabel address:
                return PointerValue.To(_regions.OfLabel(_frame.Function, address.Label));
            case Load load:
                return EvaluateLoad(load, state, demanded);
            case Assignment assignment:
                return EvaluateAssignment(assignment, state);
            case Conversion conversion:
                return ConvertTo(
                    Evaluate(conversion.Operand, state, DemandThroughConversion(conversion, demanded)),
                    conversion.Operand.Type,
                    conversion.Type
                );
            case UnaryOperation operation:
                return EvaluateUnary(operation, state, demanded);
            case BinaryOperation operation:
                return EvaluateBinary(operation, state, demanded);
            case PointerOffset offset:
            {
                var pointer = Evaluate(offset.Pointer, state);
                var index = Evaluate(offset.Index, state);
                return Move(pointer, index, offset.Index.Type, offset.ScaleBytes);
            }

            case PointerDifference difference:
                return EvaluateDifference(difference, state);
            case LogicalOperation or Conditional:
                return EvaluateBranching(expression, state);
            case Sequence sequence:
                Evaluate(sequence.First, state);
                return Evaluate(sequence.Second, state, demanded);
            case Call call:
                return EvaluateCall(call, state);
            case StatementExpression block:
                return EvaluateStatementExpression(block, state);
            case InitializedTemporary temporary:
                Initialize(_regions.Of(temporary.Variable, _frame.Depth), temporary.Initializer, state);
                return AddressOf(temporary.Variable);
            case UnknownValue unknown:
                foreach (var operand in unknown.Operands)
                {
                    Expose(Evaluate(operand, state), state);
                }

                return UnknownOf(unknown.Type);
            default:
                throw new NotSupportedException($"Expression {expression.GetType().Name}");
        }
    }

    private static int BitsOf(CType type) =>
        type switch
        {
            IntegerType integer => integer.Bits,
            PointerType pointer => pointer.Bits,
            _ => 64,
        };

    private static bool IsSigned(CType type) => type is IntegerType { IsSigned: true };

    private static AbstractValue UnknownOf(CType type) =>
        type switch
        {
            IntegerType integer => IntegerValue.Unknown(integer.Bits),
            FloatingType => FloatingValue.Unknown,
            _ => AnyValue.Instance,
        };

    private AbstractValue AddressOf(Variable variable)
    {
        if (variable is LocalVariable local)
        {
            var region = _regions.Of(local, _frame.Depth);
            _frame.Locals.Add(region);
            return PointerValue.To(region);
        }

        var global = _image.Resolve((GlobalVariable)variable);
        if (global.AbsoluteAddress is { } address)
        {
            return IntegerValue.Constant(_image.Target.PointerBits, address);
        }

        // Headers of some parts declare registers as external symbols whose addresses only the linker script knows.
        if (global.IsDeclarationOnly && _symbols.TryGetValue(global.Name, out var symbol))
        {
            return IntegerValue.Constant(_image.Target.PointerBits, symbol);
        }

        return PointerValue.To(_regions.Of(global));
    }

    private static ulong DemandThroughConversion(Conversion conversion, ulong demanded) =>
        conversion.Type is IntegerType { Bits: > 1 } to && conversion.Operand.Type is IntegerType from
            ? from.IsSigned && to.Bits > from.Bits && demanded >> (from.Bits - 1) != 0
                ? ulong.MaxValue
                : demanded & IntegerValue.MaskOf(Math.Min(to.Bits, from.Bits))
            : ulong.MaxValue;

    private static AbstractValue ConvertTo(AbstractValue value, CType from, CType to)
    {
        switch (to, value)
        {
            case (VoidType, _):
                return AnyValue.Instance;
            case (IntegerType { Bits: 1 }, not IntegerValue):
                return value.IsTrue switch
                {
                    Tristate.Yes => IntegerValue.Constant(1, 1),
                    Tristate.No => IntegerValue.Constant(1, 0),
                    _ => IntegerValue.Unknown(1),
                };
            case (IntegerType or PointerType, IntegerValue integer):
                return IntegerArithmetic.Convert(integer, BitsOf(to), IsSigned(from));
            case (IntegerType integerType, FloatingValue floating):
                return floating.Number is { } number && double.IsFinite(number) && Math.Abs(number) < 1e18
                    ? IntegerValue.Constant(integerType.Bits, (ulong)(long)Math.Truncate(number))
                    : IntegerValue.Unknown(integerType.Bits);
            case (FloatingType floatingType, IntegerValue integer):
                return integer.IsConstant
                    ? Round(
                        IsSigned(from) ? IntegerArithmetic.SignExtend(integer.Minimum, integer.Bits) : integer.Minimum,
                        floatingType
                    )
                    : FloatingValue.Unknown;
            case (FloatingType floatingType, FloatingValue floating):
                return floating.Number is { } n ? Round(n, floatingType) : floating;
            case (FloatingType, _):
                return FloatingValue.Unknown;
            case (IntegerType narrow, PointerValue) when narrow.Bits < 16:
                return IntegerValue.Unknown(narrow.Bits);
            case (IntegerType integerType, AnyValue) when from is IntegerType:
                return IntegerValue.Unknown(integerType.Bits);
            default:
                return value;
        }
    }

    private static FloatingValue Round(double number, FloatingType type) =>
        new(type.Bits == 32 ? (float)number : number);

    private AbstractValue EvaluateUnary(UnaryOperation operation, MachineState state, ulong demanded)
    {
        if (operation.Operator == UnaryOperator.LogicalNot)
        {
            var truth = Evaluate(operation.Operand, state).IsTrue;
            return Truth(
                truth == Tristate.Maybe ? truth
                    : truth == Tristate.Yes ? Tristate.No
                    : Tristate.Yes,
                operation.Type
            );
        }

        var isComplement = operation.Operator == UnaryOperator.Complement;
        return Evaluate(operation.Operand, state, isComplement ? demanded : ulong.MaxValue) switch
        {
            IntegerValue integer => isComplement
                ? IntegerArithmetic.Complement(integer)
                : IntegerArithmetic.Negate(integer),
            FloatingValue { Number: { } number } when !isComplement => new FloatingValue(-number),
            _ => UnknownOf(operation.Type),
        };
    }

    private static IntegerValue Truth(Tristate truth, CType type) =>
        truth switch
        {
            Tristate.Yes => IntegerValue.Constant(BitsOf(type), 1),
            Tristate.No => IntegerValue.Constant(BitsOf(type), 0),
            _ => IntegerValue.FromValues(BitsOf(type), [0, 1]),
        };

    private AbstractValue EvaluateBinary(BinaryOperation operation, MachineState state, ulong demanded)
    {
        AbstractValue left;
        AbstractValue right;
        if (operation.Operator == BinaryOperator.And && !IsConstant(operation.Left))
        {
            // C leaves the order open; the mask first tells which bits of the other side are looked at.
            right = Evaluate(operation.Right, state, demanded);
            left = Evaluate(operation.Left, state, demanded & MayBeOne(right));
        }
        else
        {
            left = Evaluate(operation.Left, state, DemandOfLeft(operation, demanded));
            right = Evaluate(
                operation.Right,
                state,
                operation.Operator switch
                {
                    BinaryOperator.And => demanded & MayBeOne(left),
                    BinaryOperator.Or or BinaryOperator.Xor => demanded,
                    _ => ulong.MaxValue,
                }
            );
        }

        if (
            state.OpenLock is not null
            && (left is IntegerValue { Origin: not null } || right is IntegerValue { Origin: not null })
        )
        {
            SpendCycles(state, 1);
        }

        return Combine(operation.Operator, left, right, operation.Left.Type, operation.Type);
    }

    private static ulong DemandOfLeft(BinaryOperation operation, ulong demanded)
    {
        switch (operation.Operator)
        {
            case BinaryOperator.And or BinaryOperator.Or or BinaryOperator.Xor:
                return demanded;
            case BinaryOperator.ShiftRight when operation.Right is IntegerConstant { Value: < 64 } amount:
                return demanded << (int)amount.Value;
            case BinaryOperator.ShiftLeft when operation.Right is IntegerConstant { Value: < 64 } amount:
                return demanded >> (int)amount.Value;
            default:
                return ulong.MaxValue;
        }
    }

    private static bool IsConstant(Expression expression) =>
        expression switch
        {
            IntegerConstant => true,
            Conversion conversion => IsConstant(conversion.Operand),
            UnaryOperation operation => IsConstant(operation.Operand),
            BinaryOperation operation => IsConstant(operation.Left) && IsConstant(operation.Right),
            _ => false,
        };

    private static ulong MayBeOne(AbstractValue value) =>
        value is IntegerValue integer ? (integer.Value | ~integer.Known) & integer.Mask : ulong.MaxValue;

    private static AbstractValue Combine(
        BinaryOperator @operator,
        AbstractValue left,
        AbstractValue right,
        CType operandType,
        CType resultType
    )
    {
        if (IntegerComparison.IsComparison(@operator))
        {
            return Truth(Compare(@operator, left, right, operandType), resultType);
        }

        switch (left, right)
        {
            case (_, IntegerValue { Maximum: 0 } zero) when @operator == BinaryOperator.And:
                return zero;
            case (IntegerValue a, IntegerValue b):
                return IntegerArithmetic.Apply(@operator, a, b, IsSigned(operandType));
            case (FloatingValue { Number: { } x }, FloatingValue { Number: { } y }):
                var result = @operator switch
                {
                    BinaryOperator.Add => x + y,
                    BinaryOperator.Subtract => x - y,
                    BinaryOperator.Multiply => x * y,
                    _ => x / y,
                };
                return resultType is FloatingType type ? Round(result, type) : new FloatingValue(result);
            case (PointerValue pointer, IntegerValue offset) when @operator == BinaryOperator.Add:
                return pointer.Move(offset, AddOffsets);
            case (IntegerValue offset, PointerValue pointer) when @operator == BinaryOperator.Add:
                return pointer.Move(offset, AddOffsets);
            case (PointerValue pointer, IntegerValue offset) when @operator == BinaryOperator.Subtract:
                return pointer.Move(IntegerArithmetic.Negate(offset), AddOffsets);
            default:
                return UnknownOf(resultType);
        }
    }

    private static IntegerValue AddOffsets(IntegerValue a, IntegerValue b) =>
        IntegerArithmetic.Apply(BinaryOperator.Add, a, b, isSigned: false);

    private static Tristate Compare(BinaryOperator @operator, AbstractValue left, AbstractValue right, CType type)
    {
        switch (left, right)
        {
            case (IntegerValue a, IntegerValue b) when a.Bits == b.Bits:
                return IntegerComparison.Compare(@operator, a, b, IsSigned(type));
            case (FloatingValue { Number: { } x }, FloatingValue { Number: { } y }):
                return @operator switch
                {
                    BinaryOperator.Equal => x == y,
                    BinaryOperator.NotEqual => x != y,
                    BinaryOperator.Less => x < y,
                    BinaryOperator.LessOrEqual => x <= y,
                    BinaryOperator.Greater => x > y,
                    _ => x >= y,
                }
                    ? Tristate.Yes
                    : Tristate.No;
            case (PointerValue { Address: null, Targets: [var a] }, PointerValue { Address: null, Targets: [var b] })
                when ReferenceEquals(a.Region, b.Region):
                // Offsets of one object do not wrap: signed order is the order of the addresses.
                return IntegerComparison.Compare(@operator, a.Offset, b.Offset, isSigned: true);
            case (PointerValue { Address: null } a, PointerValue { Address: null } b)
                when !a.Targets.Any(t => b.Targets.Any(u => ReferenceEquals(t.Region, u.Region))):
                return @operator switch
                {
                    BinaryOperator.Equal => Tristate.No,
                    BinaryOperator.NotEqual => Tristate.Yes,
                    _ => Tristate.Maybe,
                };
            case (PointerValue { Address: null }, IntegerValue { Maximum: 0 })
            or (IntegerValue { Maximum: 0 }, PointerValue { Address: null }):
                return @operator switch
                {
                    BinaryOperator.Equal => Tristate.No,
                    BinaryOperator.NotEqual => Tristate.Yes,
                    _ => Tristate.Maybe,
                };
            default:
                return Tristate.Maybe;
        }
    }

    private static AbstractValue Move(AbstractValue pointer, AbstractValue index, CType indexType, long scaleBytes)
    {
        if (index is not IntegerValue integer)
        {
            return AnyValue.Instance;
        }

        var wide = IntegerArithmetic.Convert(integer, PointerValue.OffsetBits, IsSigned(indexType));
        var bytes =
            scaleBytes == 1
                ? wide
                : IntegerArithmetic.Apply(
                    BinaryOperator.Multiply,
                    wide,
                    IntegerValue.Constant(PointerValue.OffsetBits, (ulong)scaleBytes),
                    isSigned: true
                );
        return pointer switch
        {
            PointerValue target => target.Move(bytes, AddOffsets),
            IntegerValue address => AddOffsets(
                address,
                IntegerArithmetic.Convert(bytes, address.Bits, sourceIsSigned: true)
            ),
            _ => AnyValue.Instance,
        };
    }

    private AbstractValue EvaluateDifference(PointerDifference difference, MachineState state)
    {
        var left = Evaluate(difference.Left, state);
        var right = Evaluate(difference.Right, state);
        var (a, b) = (left, right) switch
        {
            (IntegerValue x, IntegerValue y) => (x, y),
            (PointerValue { Address: null, Targets: [var x] }, PointerValue { Address: null, Targets: [var y] })
                when ReferenceEquals(x.Region, y.Region) => (x.Offset, y.Offset),
            _ => (null, null),
        };
        if (a is null || b is null)
        {
            return UnknownOf(difference.Type);
        }

        var bytes = IntegerArithmetic.Apply(BinaryOperator.Subtract, a, b, isSigned: true);
        var elements = IntegerArithmetic.Apply(
            BinaryOperator.Divide,
            bytes,
            IntegerValue.Constant(bytes.Bits, (ulong)Math.Max(1, difference.ScaleBytes)),
            isSigned: true
        );
        return IntegerArithmetic.Convert(elements, BitsOf(difference.Type), sourceIsSigned: true);
    }

    private AbstractValue EvaluateBranching(Expression expression, MachineState state)
    {
        if (expression is Conditional conditional)
        {
            if (conditional.WhenTrue is null)
            {
                var value = Evaluate(conditional.Condition, state);
                return value.IsTrue == Tristate.Yes ? value
                    : value.IsTrue == Tristate.No ? Evaluate(conditional.WhenFalse, state)
                    : Either(state.Copy(), s => value, state.Copy(), s => Evaluate(conditional.WhenFalse, s), state);
            }

            var (whenTrue, whenFalse) = Branch(conditional.Condition, state);
            return Either(
                whenTrue,
                s => Evaluate(conditional.WhenTrue, s),
                whenFalse,
                s => Evaluate(conditional.WhenFalse, s),
                state
            );
        }

        var (isTrue, isFalse) = Branch(expression, state);
        return Either(
            isTrue,
            _ => IntegerValue.Constant(BitsOf(expression.Type), 1),
            isFalse,
            _ => IntegerValue.Constant(BitsOf(expression.Type), 0),
            state
        );
    }

    private AbstractValue Either(
        MachineState? first,
        Func<MachineState, AbstractValue> evaluateFirst,
        MachineState? second,
        Func<MachineState, AbstractValue> evaluateSecond,
        MachineState state
    )
    {
        var a = first is null ? null : evaluateFirst(first);
        var b = second is null ? null : evaluateSecond(second);
        a = first is null or { IsUnreachable: true } ? null : a;
        b = second is null or { IsUnreachable: true } ? null : b;
        state.Become(Join(first, second));
        return a is null ? b ?? AnyValue.Instance
            : b is null ? a
            : AbstractValue.Join(a, b);
    }

    private AbstractValue EvaluateStatementExpression(StatementExpression expression, MachineState state)
    {
        var end = ExecuteStatements(expression.Body.Statements, state.Copy());
        state.Become(end);
        return end is null || expression.Result is null ? AnyValue.Instance : Evaluate(expression.Result, state);
    }
}
