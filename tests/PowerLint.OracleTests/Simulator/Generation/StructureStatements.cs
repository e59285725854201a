namespace PowerLint.OracleTests;

/// <summary>Level 3: structures, switches, calls, jumps.</summary>
internal sealed class StructureStatements(GenerationContext context)
{
    private RandomSource Random => context.Random;

    /// <summary>The kinds of statement.</summary>
    public IEnumerable<Action<SourceText, Scope, int>> Kinds =>
        [Switch, Switch, PureFunction, RegisterFunction, InitStructure, StructureCopy, StaticLocal, ForwardJump];

    private void Switch(SourceText text, Scope scope, int depth)
    {
        var cases = Random.Between(2, 5);
        text.Block(
            $"switch (({context.Expressions.Generate(scope.Readables, 2).Text}) & 7)",
            () =>
            {
                var label = 0;
                for (var index = 0; index < cases; index++)
                {
                    var isRange = Random.OneIn(4) && label < 6;
                    text.Line(isRange ? $"case {label} ... {label + 1}:" : $"case {label}:");
                    label += isRange ? 2 : 1;
                    text.Indented(() =>
                    {
                        text.Line($"{context.Register()} {Random.Pick("=", "|=", "^=")} {context.Byte()};");
                        if (!Random.OneIn(4))
                        {
                            text.Line("break;");
                        }
                    });
                    if (label > 7)
                    {
                        break;
                    }
                }

                if (!Random.OneIn(3))
                {
                    text.Line("default:");
                    text.Indented(() => text.Line($"{context.Register()} &= {context.Byte()};"));
                }
            }
        );
    }

    private void PureFunction(SourceText text, Scope scope, int depth)
    {
        if (context.Functions.Count < 4)
        {
            var name = context.Name("f");
            var result = Random.From(IntegerType.All);
            IntegerType[] parameters = [Random.From(IntegerType.All), Random.From(IntegerType.All)];
            var inner = new Scope();
            inner.Readables.Add(new Readable("a", parameters[0]));
            inner.Readables.Add(new Readable("b", parameters[1]));
            context.Declarations.Block(
                $"{Noinline()}static {result.Name} {name}({parameters[0].Name} a, {parameters[1].Name} b)",
                () =>
                {
                    if (Random.OneIn(2))
                    {
                        context.Declarations.Line(
                            $"if ({context.Expressions.Condition(inner.Readables, 2).Text}) return {context.Expressions.Generate(inner.Readables, 1).Text};"
                        );
                    }

                    context.Declarations.Line($"return {context.Expressions.Generate(inner.Readables, 2).Text};");
                }
            );
            context.Functions.Add((name, result, parameters));
        }

        var function = Random.From(context.Functions);
        var arguments = function.Parameters.Select(type =>
            context.Expressions.Generate(scope.Readables, 1).As(type).Text
        );
        text.Line($"{context.Register()} = {function.Name}({string.Join(", ", arguments)});");
    }

    private void RegisterFunction(SourceText text, Scope scope, int depth)
    {
        var name = context.Name("set");
        context.Declarations.Block(
            $"{Noinline()}static {(Random.OneIn(3) ? "inline " : "")}void {name}(volatile uint8_t *reg, uint8_t bit, uint8_t on)",
            () =>
            {
                switch (Random.Below(3))
                {
                    case 0:
                        context.Declarations.Line("if (on) *reg |= 1 << bit; else *reg &= ~(1 << bit);");
                        break;
                    case 1:
                        context.Declarations.Line("*reg = (*reg & ~(1 << bit)) | (!!on << bit);");
                        break;
                    default:
                        context.Declarations.Line(
                            "*reg = on ? *reg | (uint8_t)(1u << bit) : *reg & (uint8_t)~(1u << bit);"
                        );
                        break;
                }
            }
        );
        for (var times = Random.Between(1, 3); times > 0; times--)
        {
            text.Line(
                $"{name}(&{context.Register()}, {Random.Below(8)}, {context.Expressions.Condition(scope.Readables, 1).Text});"
            );
        }
    }

    private void InitStructure(SourceText text, Scope scope, int depth)
    {
        var (type, name, variable) = (context.Name("init_t"), context.Name("init"), context.Name("c"));
        context.Declarations.Line(
            $"typedef struct {{ volatile uint8_t *base; uint8_t pins; uint16_t options; uint8_t mode; }} {type};"
        );
        context.Declarations.Block(
            $"{Noinline()}static void {name}(const {type} *init)",
            () =>
            {
                var d = context.Declarations;
                d.Block(
                    "for (uint8_t position = 0; position < 8; position++)",
                    () =>
                    {
                        d.Line("uint8_t mask = (uint8_t)(1u << position);");
                        d.Line("if (!(init->pins & mask)) continue;");
                        d.Block(
                            "switch (init->mode)",
                            () =>
                            {
                                d.Line("case 0: init->base[1] &= ~mask; init->base[2] &= ~mask; break;");
                                d.Line("case 1: init->base[1] &= ~mask; init->base[2] |= mask; break;");
                                d.Line(
                                    $"case 2: init->base[2] |= mask;{(Random.OneIn(2) ? "" : " init->base[1] |= mask; break;")}"
                                );
                                d.Line(
                                    "default: init->base[1] |= mask; if (init->options >> 8 & mask) init->base[2] ^= mask;"
                                );
                            }
                        );
                    }
                );
            }
        );
        text.Line(
            $"{type} {variable} = {{.base = &PIN{Random.From(context.Part.Ports)}, .pins = {context.Byte()}, .mode = {Random.Below(4)}, .options = {Random.Below(30000)}}};"
        );
        text.Line($"{name}(&{variable});");
        text.Line(
            $"{variable}.pins {Random.Pick("=", "^=", "&=")} {context.Expressions.Generate(scope.Readables, 1).Text};"
        );
        text.Line($"{variable}.mode = {Random.Below(4)};");
        text.Line($"{name}(&{variable});");
        if (Random.OneIn(2))
        {
            text.Line(
                $"{name}(&({type}){{&PIN{Random.From(context.Part.Ports)}, {context.Byte()}, 0x1234, {Random.Below(4)}}});"
            );
        }
    }

    private void StructureCopy(SourceText text, Scope scope, int depth)
    {
        var (type, make, a, b) = (context.Name("pair_t"), context.Name("make"), context.Name("s"), context.Name("s"));
        context.Declarations.Line($"typedef struct {{ uint8_t x; int16_t y; struct {{ uint8_t z[3]; }} in; }} {type};");
        context.Declarations.Block(
            $"{Noinline()}static {type} {make}(uint8_t x, int8_t y)",
            () =>
                context.Declarations.Line(
                    $"{type} made = {{.x = x, .y = y, .in = {{{{{context.Byte()}, (uint8_t)(x ^ y), [2] = {context.Byte()}}}}}}}; return made;"
                )
        );
        text.Line($"{type} {a} = {make}({Cast(scope, IntegerType.U8)}, {Cast(scope, IntegerType.I8)});");
        text.Line($"{type} {b} = {a};");
        text.Line($"{b}.in.z[{Random.Below(3)}] = {Cast(scope, IntegerType.U8)};");
        text.Line($"{a}.in = {b}.in;");
        text.Line($"{context.Register()} = {a}.in.z[{Random.Below(3)}] ^ {b}.x;");
        text.Line($"{context.Register()} = {b}.y >> {Random.Below(8)};");
    }

    private void StaticLocal(SourceText text, Scope scope, int depth)
    {
        var name = context.Name("next");
        context.Declarations.Block(
            $"{Noinline()}static uint8_t {name}(void)",
            () =>
            {
                context.Declarations.Line($"static uint8_t state = {context.Byte()};");
                context.Declarations.Line(
                    Random.OneIn(2) ? "state = (state << 1) | (state >> 7);" : $"state += {Random.Between(1, 40)};"
                );
                context.Declarations.Line("return state;");
            }
        );
        for (var times = Random.Between(1, 3); times > 0; times--)
        {
            text.Line($"{context.Register()} {Random.Pick("=", "|=", "^=")} {name}();");
        }
    }

    private void ForwardJump(SourceText text, Scope scope, int depth)
    {
        var label = context.Name("skip");
        text.Line($"if ({context.Expressions.Condition(scope.Readables, 1).Text}) goto {label};");
        text.Line($"{context.Register()} ^= {context.Byte()};");
        text.Line($"{label}:");
        text.Line($"{context.Register()} |= {context.Byte()};");
    }

    private string Cast(Scope scope, IntegerType type) =>
        context.Expressions.Generate(scope.Readables, 1).As(type).Text;

    private string Noinline() => Random.OneIn(2) ? "__attribute__((noinline)) " : "";
}
