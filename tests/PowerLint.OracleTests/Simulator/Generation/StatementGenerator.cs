using System.Globalization;

namespace PowerLint.OracleTests;

/// <summary>Level 1: assignments to registers and variables, masks, branches, counted loops.</summary>
internal sealed class StatementGenerator
{
    private readonly GenerationContext _context;
    private readonly List<Action<SourceText, Scope, int>> _kinds;

    public StatementGenerator(GenerationContext context)
    {
        _context = context;
        _kinds =
        [
            AssignRegister,
            ModifyRegister,
            ModifyRegister,
            AssignVariable,
            CompoundVariable,
            Branch,
            CountedLoop,
            MaskLoop,
            CountDown,
        ];
        if (context.Level >= 2)
        {
            _kinds.AddRange(new TableStatements(context).Kinds);
        }

        if (context.Level >= 3)
        {
            _kinds.AddRange(new StructureStatements(context).Kinds);
        }

        if (context.Level >= 5)
        {
            _kinds.AddRange(new MixedStatements(context).Kinds);
        }
    }

    private RandomSource Random => _context.Random;

    /// <summary>Writes some statements.</summary>
    public void Write(SourceText text, Scope scope, int count, int depth)
    {
        for (var index = 0; index < count; index++)
        {
            Random.From(_kinds)(text, scope, depth);
        }
    }

    /// <summary>Writes statements that give the same whenever they run: a register set from constants.</summary>
    public void WriteConstant(SourceText text)
    {
        var name = _context.Name("k");
        text.Line($"uint8_t {name} = {_context.Byte()};");
        text.Line($"for (uint8_t i = 0; i < {Random.Between(2, 8)}; i++) {name} ^= {name} << 1;");
        text.Line($"{_context.Register()} = {name};");
    }

    /// <summary>Declares a local variable.</summary>
    public void Local(SourceText text, Scope scope)
    {
        var type = Random.From(
            _context.Level >= 3 ? IntegerType.All : [IntegerType.U8, IntegerType.U8, IntegerType.U16]
        );
        var name = _context.Name("v");
        text.Line($"{type.Name} {name} = {_context.Expressions.Generate(scope.Readables, 1).Text};");
        scope.Readables.Add(new Readable(name, type));
        scope.Variables.Add(new Readable(name, type));
    }

    private void AssignRegister(SourceText text, Scope scope, int depth) =>
        text.Line($"{_context.Register()} = {_context.Expressions.Generate(Reading(scope), 2).Text};");

    private void ModifyRegister(SourceText text, Scope scope, int depth)
    {
        var register = _context.Register();
        var bit = Random.Below(8);
        var value = _context.Expressions.Generate(Reading(scope), 1).Text;
        text.Line(
            Random.Below(9) switch
            {
                0 => $"{register} |= (1 << {bit});",
                1 => $"{register} &= ~(1 << {bit});",
                2 => $"{register} &= (uint8_t)~_BV({bit});",
                3 => $"{register} ^= {_context.Byte()};",
                4 => $"{register} |= 1 << ({value} & 7);",
                5 => $"{register} &= ~(1 << ({value} & 7));",
                6 => $"{register} = ({register} & {_context.Byte()}) | ({value} & {_context.Byte()});",
                7 => $"{register} {Random.Pick("|=", "&=", "^=")} {value};",
                _ => $"{register} {Random.Pick("<<=", ">>=")} {Random.Between(1, 3)};",
            }
        );
    }

    private void AssignVariable(SourceText text, Scope scope, int depth)
    {
        if (scope.Variables.Count == 0)
        {
            Local(text, scope);
            return;
        }

        var variable = Random.From(scope.Variables);
        text.Line($"{variable.Text} = {_context.Expressions.Generate(Reading(scope), 2).Text};");
    }

    private void CompoundVariable(SourceText text, Scope scope, int depth)
    {
        var unsigned = scope.Variables.Where(v => !v.Type.IsSigned).ToArray();
        if (unsigned.Length == 0)
        {
            Local(text, scope);
            return;
        }

        var variable = Random.Pick<Readable>(unsigned);
        var value = _context.Expressions.Generate(Reading(scope), 1).As(variable.Type).Text;
        text.Line(
            Random.Below(5) switch
            {
                0 => $"{variable.Text} += {value};",
                1 => $"{variable.Text} -= {value};",
                2 => $"{variable.Text} {Random.Pick("|=", "&=", "^=")} {value};",
                3 => Random.OneIn(2) ? $"{variable.Text}++;" : $"--{variable.Text};",
                _ => $"{variable.Text} {Random.Pick("<<=", ">>=")} {Random.Between(1, 7)};",
            }
        );
    }

    private void Branch(SourceText text, Scope scope, int depth)
    {
        if (depth <= 0)
        {
            ModifyRegister(text, scope, depth);
            return;
        }

        var condition = _context.Expressions.Condition(Reading(scope), 2).Text;
        text.Block($"if ({condition})", () => Write(text, scope.Inner(isLoop: false), Random.Between(1, 2), depth - 1));
        if (Random.OneIn(2))
        {
            text.Block("else", () => Write(text, scope.Inner(isLoop: false), Random.Between(1, 2), depth - 1));
        }
    }

    private void CountedLoop(SourceText text, Scope scope, int depth)
    {
        if (depth <= 0 || scope.Loops >= 2)
        {
            AssignRegister(text, scope, depth);
            return;
        }

        var name = _context.Name("i");
        var count = Random.Between(2, 8);
        var head = Random.Below(3) switch
        {
            0 => $"for (uint8_t {name} = 0; {name} < {count}; {name}++)",
            1 => $"for (uint8_t {name} = {count}; {name} > 0; {name} -= 1)",
            _ => $"for (int8_t {name} = {count - 1}; {name} >= 0; --{name})",
        };
        text.Block(
            head,
            () =>
            {
                var inner = scope.Inner(isLoop: true);
                inner.Readables.Add(new Readable(name, IntegerType.U8)); // never negative in the body
                var register = _context.Register();
                if (Random.OneIn(2))
                {
                    text.Block(
                        $"if ({name} {Random.Pick("==", "!=", "<", ">=")} {Random.Below(count)})",
                        () => text.Line(Random.OneIn(3) ? "continue;" : $"{register} |= (1 << {name});")
                    );
                }

                text.Line($"{register} {Random.Pick("|= ", "^= ", "&= ~")}(1 << {name});");
                Write(text, inner, Random.Between(0, 2), depth - 1);
                if (Random.OneIn(5))
                {
                    text.Line($"if ({name} == {Random.Below(count)}) break;");
                }
            }
        );
    }

    private void MaskLoop(SourceText text, Scope scope, int depth)
    {
        if (depth <= 0 || scope.Loops >= 2)
        {
            ModifyRegister(text, scope, depth);
            return;
        }

        var name = _context.Name("m");
        var isUp = Random.OneIn(2);
        text.Line($"uint8_t {name} = {(isUp ? "1" : "0x80")};");
        text.Block(
            $"while ({name})",
            () =>
            {
                var inner = scope.Inner(isLoop: true);
                inner.Readables.Add(new Readable(name, IntegerType.U8));
                text.Line($"if ({_context.Byte()} & {name}) {_context.Register()} |= {name};");
                if (Random.OneIn(2))
                {
                    text.Line($"else {_context.Register()} &= ~{name};");
                }

                // The step stands last and nothing in the body jumps over it.
                AssignVariable(text, inner, 0);
                text.Line($"{name} {(isUp ? "<<=" : ">>=")} 1;");
            }
        );
    }

    private void CountDown(SourceText text, Scope scope, int depth)
    {
        if (scope.Loops >= 2)
        {
            AssignRegister(text, scope, depth);
            return;
        }

        var name = _context.Name("n");
        text.Line($"uint8_t {name} = {Random.Between(1, 8)};");
        text.Block(
            "do",
            () =>
            {
                var inner = scope.Inner(isLoop: true);
                inner.Readables.Add(new Readable(name, IntegerType.U8));
                AssignRegister(text, inner, 0);
                ModifyRegister(text, inner, 0);
            },
            $" while (--{name}{(Random.OneIn(2) ? " != 0" : "")});"
        );
    }

    /// <summary>What expressions can read here: variables, some registers, calls of pure functions.</summary>
    private List<Readable> Reading(Scope scope)
    {
        List<Readable> all = [.. scope.Readables, new Readable(Random.From(_context.Part.Registers), IntegerType.U8)];
        if (_context.Functions.Count > 0 && Random.OneIn(2))
        {
            var (name, result, parameters) = Random.From(_context.Functions);
            var arguments = parameters.Select(type => _context.Expressions.Generate(scope.Readables, 1).As(type).Text);
            all.Add(
                new Readable(
                    string.Create(CultureInfo.InvariantCulture, $"{name}({string.Join(", ", arguments)})"),
                    result
                )
            );
        }

        return all;
    }
}
