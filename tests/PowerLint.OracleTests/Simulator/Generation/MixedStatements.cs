namespace PowerLint.OracleTests;

/// <summary>Level 5: unions, bit-fields, function pointers, 16-bit registers, wide arithmetic.</summary>
internal sealed class MixedStatements(GenerationContext context)
{
    private RandomSource Random => context.Random;

    /// <summary>The kinds of statement.</summary>
    public IEnumerable<Action<SourceText, Scope, int>> Kinds =>
        [
            Union,
            RegisterFields,
            LocalFields,
            FunctionTable,
            WordRegister,
            WordRegister,
            WideArithmetic,
            PromotionTrap,
            PromotionTrap,
            FlashTable,
            CharSign,
        ];

    private void Union(SourceText text, Scope scope, int depth)
    {
        var (type, name) = (context.Name("word_t"), context.Name("u"));
        context.Declarations.Line(
            $"typedef union {{ uint32_t word; uint16_t half[2]; uint8_t byte[4]; struct {{ uint8_t low : 3, mid : 7, high : 6; }} bits; }} {type};"
        );
        text.Line($"{type} {name};");
        text.Line($"{name}.word = {Value(scope, IntegerType.U32)};");
        text.Line($"{name}.half[{Random.Below(2)}] {Random.Pick("+=", "^=", "=")} {Value(scope, IntegerType.U16)};");
        text.Line($"{name}.bits.{Random.Pick("low", "mid", "high")} = {Value(scope, IntegerType.U8)};");
        text.Line($"{context.Register()} = {name}.byte[{Random.Below(4)}];");
        text.Line($"{context.Register()} ^= {name}.bits.{Random.Pick("low", "mid", "high")};");
        scope.Readables.Add(new Readable($"{name}.byte[{Random.Below(4)}]", IntegerType.U8));
    }

    private void RegisterFields(SourceText text, Scope scope, int depth)
    {
        var (type, name) = (context.Name("fields_t"), context.Name("r"));
        var split = Random.Between(1, 5);
        context.Declarations.Line(
            $"typedef struct {{ uint8_t a : {split}; uint8_t b : {7 - split}; uint8_t c : 1; }} {type};"
        );
        text.Line($"volatile {type} *{name} = (volatile {type} *)&{context.Register()};");
        text.Line($"{name}->a = {Value(scope, IntegerType.U8)};");
        text.Line($"{name}->c = {Random.Pick("1", "0", $"{name}->a & 1", $"!{name}->b")};");
        text.Line($"{name}->b {Random.Pick("=", "|=", "^=")} {Random.Below(1 << (7 - split))};");
    }

    private void LocalFields(SourceText text, Scope scope, int depth)
    {
        var name = context.Name("f");
        text.Line(
            $"struct {{ int16_t s : 5; uint16_t t : 9; int8_t : 0; int8_t q : 2; uint8_t w; }} {name} = {{{Random.Between(-16, 15)}, {Random.Below(512)}, 1, {context.Byte()}}};"
        );
        text.Line($"{name}.t += {Random.Below(512)};");
        text.Line($"{name}.s = {name}.q - {Random.Between(0, 10)};");
        text.Line($"{context.Register()} = {name}.t >> {Random.Below(4)};");
        text.Line($"{context.Register()} = {name}.s < {name}.q ? {name}.w : {name}.s;");
    }

    private void FunctionTable(SourceText text, Scope scope, int depth)
    {
        var table = context.Name("steps");
        var count = Random.Between(2, 4);
        var names = Enumerable.Range(0, count).Select(_ => context.Name("step")).ToArray();
        foreach (var name in names)
        {
            context.Declarations.Line(
                $"static void {name}(uint8_t n) {{ {context.Register()} {Random.Pick("|=", "^=", "=")} {context.Byte()} >> (n & 3); }}"
            );
        }

        context.Declarations.Line($"static void (*const {table}[{count}])(uint8_t) = {{{string.Join(", ", names)}}};");
        var index = context.Name("i");
        text.Line(
            Random.OneIn(2)
                ? $"for (uint8_t {index} = 0; {index} < {count}; {index}++) {table}[{index}]({index});"
                : $"(*{table}[({Value(scope, IntegerType.U8)}) % {count}])({Value(scope, IntegerType.U8)});"
        );
    }

    private void WordRegister(SourceText text, Scope scope, int depth)
    {
        if (context.Part.Words.Count == 0)
        {
            PromotionTrap(text, scope, depth);
            return;
        }

        var register = Random.From(context.Part.Words);
        text.Line(
            Random.Below(4) switch
            {
                0 => $"{register} = {Value(scope, IntegerType.U16)};",
                1 => $"{register} {Random.Pick("|=", "^=", "&=", "+=", "-=")} {Value(scope, IntegerType.U16)};",
                2 => $"*(volatile uint16_t *)&{register} = {Random.Below(65536)}U;",
                // The high byte first: it waits in a buffer until the low byte comes.
                _ => $"{register}H = {Value(scope, IntegerType.U8)}; {register}L = {context.Byte()};",
            }
        );
        scope.Readables.Add(new Readable(register, IntegerType.U16));
    }

    private void WideArithmetic(SourceText text, Scope scope, int depth)
    {
        var name = context.Name("w");
        text.Line($"uint32_t {name} = {Value(scope, IntegerType.U32)};");
        text.Line($"{name} = {name} * {Random.Below(60000) * 2 + 1}UL + {Random.Below(30000)};");
        text.Line($"{name} ^= {name} >> {Random.Between(1, 20)};");
        text.Line($"int32_t {name}s = (int32_t){name} / {Random.Between(2, 3000)};");
        text.Line($"{context.Register()} = {name} % {Random.Between(3, 250)}UL;");
        text.Line($"{context.Register()} = {name}s {Random.Pick("<", ">")} 0 ? {name}s >> 4 : {name} >> 24;");
        if (Random.OneIn(3))
        {
            text.Line($"uint64_t {name}q = (uint64_t){name} << {Random.Between(1, 30)};");
            text.Line($"{context.Register()} = {name}q >> {Random.Between(20, 50)};");
        }

        scope.Readables.Add(new Readable(name, IntegerType.U32));
    }

    private void PromotionTrap(SourceText text, Scope scope, int depth)
    {
        var (a, b) = (context.Name("t"), context.Name("t"));
        text.Line($"uint8_t {a} = {Value(scope, IntegerType.U8)};");
        text.Line($"int8_t {b} = {Value(scope, IntegerType.I8)};");
        text.Line(
            Random.Below(6) switch
            {
                0 => $"if ((~{a} & 0xff) == (uint8_t)~{a} && {b} < {a}) {context.Register()} |= {context.Byte()};",
                1 => $"{context.Register()} = ({a} << 4) >> 3;",
                2 => $"{context.Register()} = ((uint8_t)({a} << 4) >> 3) + ({b} >> 2);",
                3 => $"{context.Register()} = ({b} > 1U) ? {a} : ~{a};",
                4 => $"{context.Register()} = (uint16_t)({a} * 257U) / 3 - ({b} % 5);",
                _ => $"{context.Register()} = ((uint16_t){b} > 0x7fff) | ({a} + {b} > 255) << 3;",
            }
        );
    }

    private void FlashTable(SourceText text, Scope scope, int depth)
    {
        var table = context.Name("flash");
        var count = Random.Pick(2, 4, 8);
        var values = string.Join(", ", Enumerable.Range(0, count).Select(_ => context.Byte()));
        context.Declarations.Line($"static const uint8_t {table}[{count}] PROGMEM = {{{values}}};");
        text.Line(
            $"{context.Register()} {Random.Pick("=", "^=", "|=")} pgm_read_byte(&{table}[({Value(scope, IntegerType.U8)}) & {count - 1}]);"
        );
    }

    private void CharSign(SourceText text, Scope scope, int depth)
    {
        var name = context.Name("z");
        text.Line($"char {name} = {Value(scope, IntegerType.U8)};");
        text.Line($"{context.Register()} = {name} < 0 ? {context.Byte()} : {name} + 1;");
        text.Line($"{context.Register()} = \"depth\"[({name} & 3) + 1];");
    }

    private string Value(Scope scope, IntegerType type) =>
        context.Expressions.Generate(scope.Readables, 2).As(type).Text;
}
