using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>
/// A loop that only counts: one plain local goes by a constant step until a comparison with a value that the loop does not
/// change ends it, and nothing else happens but <c>nop</c>s.
/// </summary>
internal sealed class CountedLoop
{
    private CountedLoop(Variable counter, IntegerType type, Expression limit, bool isVolatile)
    {
        Counter = counter;
        Type = type;
        Limit = limit;
        IsVolatile = isVolatile;
    }

    public Variable Counter { get; }

    public IntegerType Type { get; }

    /// <summary>What is compared with; null where the counter is compared with zero.</summary>
    public Expression Limit { get; }

    public bool IsVolatile { get; }

    /// <summary>How the pass's comparison goes, with the counter on its left.</summary>
    public BinaryOperator Comparison { get; private init; }

    public bool ComparisonIsSigned { get; private init; }

    /// <summary>The width that the comparison is made in, and whether the counter is widened with its sign.</summary>
    public IntegerType ComparisonType { get; private init; } = null!;

    /// <summary>What a pass adds to the counter, modulo its width.</summary>
    public ulong StepValue { get; private init; }

    /// <summary>Whether the step is part of the condition and sees the old value (<c>n--</c>) or the new one (<c>--n</c>).</summary>
    public StepPlace Place { get; private init; }

    public bool TestsAfterBody { get; private init; }

    /// <summary>CPU cycles of the <c>nop</c>s and delays of one pass.</summary>
    public int BodyCycles { get; private init; }

    /// <summary>Whether a compiler that optimises keeps the loop: it counts in memory, or holds assembly.</summary>
    public bool OutlivesOptimization { get; private init; }

    public static CountedLoop? Recognize(Loop loop)
    {
        if (loop.Condition is null || !IsEmptyBody(loop.Body, out var bodyStep, out var cycles, out var holdsAssembly))
        {
            return null;
        }

        var (condition, negated) = Strip(loop.Condition);
        if (negated)
        {
            return null;
        }

        Expression counterSide;
        Expression limit;
        BinaryOperator comparison;
        if (condition is BinaryOperation binary && IntegerComparison.IsComparison(binary.Operator))
        {
            (counterSide, limit, comparison) = (binary.Left, binary.Right, binary.Operator);
            if (FindCounter(counterSide) is null)
            {
                (counterSide, limit, comparison) = (limit, counterSide, IntegerComparison.Swap(comparison));
            }
        }
        else
        {
            counterSide = condition;
            limit = new IntegerConstant(condition.Type, condition.Range, 0);
            comparison = BinaryOperator.NotEqual;
        }

        if (counterSide.Type is not IntegerType comparisonType || FindCounter(counterSide) is not { } counter)
        {
            return null;
        }

        var (variable, type, stepInCondition, isVolatile) = counter;
        var steps = new List<(Assignment Step, StepPlace Place)>();
        if (stepInCondition is not null)
        {
            steps.Add(
                (stepInCondition, stepInCondition.YieldsOldValue ? StepPlace.ConditionAfter : StepPlace.ConditionBefore)
            );
        }

        if (loop.Step is Assignment step)
        {
            steps.Add((step, StepPlace.EndOfPass));
        }
        else if (loop.Step is not null)
        {
            return null;
        }

        if (bodyStep is not null)
        {
            steps.Add((bodyStep, StepPlace.EndOfPass));
        }

        if (
            steps.Count != 1
            || StepOf(steps[0].Step, variable, type) is not { } stepValue
            || !IsInvariant(limit, variable)
        )
        {
            return null;
        }

        return new CountedLoop(variable, type, limit, isVolatile)
        {
            Comparison = comparison,
            ComparisonIsSigned = comparisonType.IsSigned,
            ComparisonType = comparisonType,
            StepValue = stepValue,
            Place = steps[0].Place,
            TestsAfterBody = loop.TestsAfterBody,
            BodyCycles = cycles,
            OutlivesOptimization = isVolatile || holdsAssembly,
        };
    }

    /// <summary>
    /// Counts the passes from a start value and gives the counter's value after the loop; null where the loop does not end.
    /// </summary>
    public (ulong Passes, ulong Final)? Run(ulong start, ulong limit)
    {
        // Comparison of a counter that moves by a constant step: count until the outcome changes, in closed form where the
        // range is long.
        var mask = IntegerValue.MaskOf(Type.Bits);
        var value = start & mask;
        ulong passes = 0;
        const ulong MostPasses = 1UL << 33;
        var isFirst = true;
        while (passes < MostPasses)
        {
            if (!(TestsAfterBody && isFirst))
            {
                if (Place == StepPlace.ConditionBefore)
                {
                    value = (value + StepValue) & mask;
                }

                var goesOn = Holds(value, limit);
                if (Place == StepPlace.ConditionAfter)
                {
                    value = (value + StepValue) & mask;
                }

                if (!goesOn)
                {
                    return (passes, value);
                }
            }

            isFirst = false;
            passes++;
            if (Place == StepPlace.EndOfPass)
            {
                value = (value + StepValue) & mask;
            }

            if (passes > (1UL << 22))
            {
                return Leap(value, limit, passes);
            }
        }

        return null;
    }

    // Long counts by one: the distance to the limit is the number of passes.
    private (ulong Passes, ulong Final)? Leap(ulong value, ulong limit, ulong passes)
    {
        var mask = IntegerValue.MaskOf(Type.Bits);
        var isUp = StepValue == 1;
        if (!isUp && StepValue != mask)
        {
            return null;
        }

        var end = Comparison switch
        {
            BinaryOperator.Less or BinaryOperator.NotEqual or BinaryOperator.Greater => limit & mask,
            BinaryOperator.LessOrEqual => (limit + 1) & mask,
            BinaryOperator.GreaterOrEqual => (limit - 1) & mask,
            _ => value,
        };
        var distance = isUp ? (end - value) & mask : (value - end) & mask;
        return Holds(end, limit) ? null : (passes + distance, end);
    }

    private bool Holds(ulong value, ulong limit)
    {
        var wide = Type.IsSigned ? (ulong)IntegerArithmetic.SignExtend(value, Type.Bits) : value;
        return IntegerComparison.Concrete(
            Comparison,
            wide & IntegerValue.MaskOf(ComparisonType.Bits),
            limit & IntegerValue.MaskOf(ComparisonType.Bits),
            ComparisonType.Bits,
            ComparisonIsSigned
        );
    }

    private static (Expression Condition, bool Negated) Strip(Expression condition)
    {
        while (condition is Conversion { Type: IntegerType { Bits: 1 } } conversion)
        {
            condition = conversion.Operand;
        }

        return (condition, condition is UnaryOperation { Operator: UnaryOperator.LogicalNot });
    }

    private static (Variable Variable, IntegerType Type, Assignment? Step, bool IsVolatile)? FindCounter(
        Expression side
    )
    {
        while (
            side is Conversion { Type: IntegerType to, Operand: { Type: IntegerType from } operand }
            && to.Bits >= from.Bits
        )
        {
            side = operand;
        }

        return side switch
        {
            Load
            {
                BitField: null,
                Type: IntegerType type,
                Address: AddressOfVariable { Variable: LocalVariable variable }
            } load => (variable, type, null, load.IsVolatile),
            Assignment
            {
                BitField: null,
                Operator: not null,
                Type: IntegerType type,
                Address: AddressOfVariable { Variable: LocalVariable variable },
            } step => (variable, type, step, step.IsVolatile),
            _ => null,
        };
    }

    private static ulong? StepOf(Assignment step, Variable counter, IntegerType type)
    {
        if (
            step.Address is not AddressOfVariable { Variable: var target }
            || target != counter
            || step.BitField is not null
        )
        {
            return null;
        }

        var amount = step.Value switch
        {
            IntegerConstant constant => constant.Value,
            Conversion { Operand: IntegerConstant constant } => constant.Value,
            _ => (ulong?)null,
        };
        if (amount is not { } value)
        {
            return null;
        }

        return step.Operator switch
        {
            BinaryOperator.Add => value & IntegerValue.MaskOf(type.Bits),
            BinaryOperator.Subtract => (0 - value) & IntegerValue.MaskOf(type.Bits),
            _ => null,
        };
    }

    private static bool IsInvariant(Expression expression, Variable counter) =>
        expression switch
        {
            IntegerConstant => true,
            Conversion conversion => IsInvariant(conversion.Operand, counter),
            UnaryOperation operation => IsInvariant(operation.Operand, counter),
            BinaryOperation operation => IsInvariant(operation.Left, counter) && IsInvariant(operation.Right, counter),
            Load { Address: AddressOfVariable { Variable: LocalVariable variable } } => variable != counter,
            _ => false,
        };

    private static bool IsEmptyBody(Statement body, out Assignment? step, out int cycles, out bool holdsAssembly)
    {
        step = null;
        cycles = 0;
        holdsAssembly = false;
        return Visit(body, ref step, ref cycles, ref holdsAssembly);

        static bool Visit(Statement statement, ref Assignment? step, ref int cycles, ref bool holdsAssembly)
        {
            switch (statement)
            {
                case Block block:
                    foreach (var inner in block.Statements)
                    {
                        if (!Visit(inner, ref step, ref cycles, ref holdsAssembly))
                        {
                            return false;
                        }
                    }

                    return true;
                case ExpressionStatement { Expression: Assignment assignment }
                    when step is null && assignment.Operator is not null:
                    step = assignment;
                    return true;
                case InlineAssembly { Outputs.Count: 0, Inputs.Count: 0 } assembly
                    when NopsIn(assembly.Template) is { } nops:
                    cycles += nops;
                    holdsAssembly = true;
                    return true;
                default:
                    return false;
            }
        }
    }

    // An empty template (a compiler barrier) counts as zero; anything but nop and wdr is not an empty body.
    private static int? NopsIn(string template)
    {
        var nops = 0;
        foreach (
            var line in template.Split(
                ['\n', ';', '\t'],
                StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries
            )
        )
        {
            if (line is not ("nop" or "wdr" or "NOP"))
            {
                return null;
            }

            nops++;
        }

        return nops;
    }
}

/// <summary>Where a counted loop's counter takes its step.</summary>
internal enum StepPlace
{
    /// <summary>At the end of a pass.</summary>
    EndOfPass,

    /// <summary>In the condition, before the comparison (<c>--n</c>).</summary>
    ConditionBefore,

    /// <summary>In the condition, after the comparison (<c>n--</c>).</summary>
    ConditionAfter,
}
