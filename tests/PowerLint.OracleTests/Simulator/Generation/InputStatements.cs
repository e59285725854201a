namespace PowerLint.OracleTests;

/// <summary>
/// Statements on what comes from the pins: the analysis knows some bits of it at most. They all end in one or two registers, so
/// that the rest of the state stays exact.
/// </summary>
internal sealed class InputStatements
{
    private readonly GenerationContext _context;
    private readonly string _sink;
    private readonly string _other;
    private readonly Action<SourceText, IReadOnlyList<Readable>>[] _kinds;

    public InputStatements(GenerationContext context)
    {
        _context = context;
        _sink = context.Register();
        _other = Random.OneIn(4) ? context.Register() : _sink;
        _kinds =
        [
            Assign,
            Assign,
            Decide,
            Decide,
            UnknownBound,
            ChosenPointer,
            SwitchOnInput,
            Table,
            Reduce,
            ArrayPlace,
            EarlyReturn,
            Wide,
            Refine,
            Fields,
        ];
    }

    private RandomSource Random => _context.Random;

    /// <summary>Writes some, in a block of their own.</summary>
    public void Write(SourceText text)
    {
        text.Block(
            "",
            () =>
            {
                var scope = new List<Readable>();
                for (var count = Random.Between(1, 2); count > 0; count--)
                {
                    var type = Random.From(IntegerType.All);
                    var name = _context.Name("in");
                    var pins = $"PIN{Random.From(_context.Part.Ports)}";
                    text.Line(
                        Random.Below(4) switch
                        {
                            0 => $"{type.Name} {name} = {pins};",
                            1 => $"{type.Name} {name} = {pins} & {_context.Byte()};",
                            2 => $"{type.Name} {name} = ({pins} << 4) | {Random.Below(16)};",
                            _ => $"{type.Name} {name} = {pins} % {Random.Between(2, 60)} + {Random.Below(100)};",
                        }
                    );
                    scope.Add(new Readable(name, type));
                }

                for (var count = Random.Between(1, 3); count > 0; count--)
                {
                    Random.Pick(_kinds)(text, scope);
                }
            }
        );
    }

    private void Assign(SourceText text, IReadOnlyList<Readable> scope) =>
        text.Line(
            Random.OneIn(2)
                ? $"{_sink} = {Expression(scope, 3)};"
                : $"{_sink} {Random.Pick("|=", "&=", "^=")} {Expression(scope, 2)};"
        );

    private void Decide(SourceText text, IReadOnlyList<Readable> scope)
    {
        text.Line($"if ({Condition(scope)}) {_sink} |= _BV({Bit()});");
        if (Random.OneIn(2))
        {
            text.Line($"else {_sink} = {Expression(scope, 1)};");
        }
    }

    private void UnknownBound(SourceText text, IReadOnlyList<Readable> scope)
    {
        var name = _context.Name("i");
        text.Line(
            $"for (uint8_t {name} = {Random.Below(3)}; {name} < (({Expression(scope, 1)}) & 7); {name} += {Random.Between(1, 2)}) {_sink} {Random.Pick("^=", "|=")} 1 << {name};"
        );
    }

    private void ChosenPointer(SourceText text, IReadOnlyList<Readable> scope)
    {
        var name = _context.Name("p");
        text.Line($"volatile uint8_t *{name} = {Condition(scope)} ? &{_sink} : &{_other};");
        text.Line($"*{name} {Random.Pick("=", "|=", "^=")} {_context.Byte()};");
    }

    private void SwitchOnInput(SourceText text, IReadOnlyList<Readable> scope) =>
        text.Block(
            $"switch (({Expression(scope, 1)}) & 3)",
            () =>
            {
                text.Line($"case 0: {_sink} = {_context.Byte()}; break;");
                text.Line($"case 1: {_sink} &= {_context.Byte()};{(Random.OneIn(2) ? " break;" : "")}");
                text.Line($"case 3: {_sink} ^= {_context.Byte()};");
            }
        );

    private void Table(SourceText text, IReadOnlyList<Readable> scope)
    {
        var name = _context.Name("map");
        _context.Declarations.Line(
            $"static const uint8_t {name}[4] = {{{_context.Byte()}, {_context.Byte()}, {_context.Byte()}, {_context.Byte()}}};"
        );
        text.Line($"{_sink} = {name}[({Expression(scope, 1)}) & 3] & {_context.Byte()};");
    }

    private void Reduce(SourceText text, IReadOnlyList<Readable> scope)
    {
        var name = _context.Name("x");
        text.Line($"uint8_t {name} = {Expression(scope, 1)};");
        // The bound is no less than the step: it never passes below zero.
        text.Line($"while ({name} > {Random.Between(40, 200)}) {name} -= {Random.Between(3, 40)};");
        text.Line($"{_sink} = {name} | {_context.Byte()};");
    }

    private void ArrayPlace(SourceText text, IReadOnlyList<Readable> scope)
    {
        var name = _context.Name("a");
        text.Line(
            $"uint8_t {name}[4] = {{{_context.Byte()}, {_context.Byte()}, {_context.Byte()}, {_context.Byte()}}};"
        );
        text.Line($"{name}[({Expression(scope, 1)}) & 3] = {_context.Byte()};");
        text.Line($"{_sink} = {name}[{Random.Below(4)}];");
    }

    private void EarlyReturn(SourceText text, IReadOnlyList<Readable> scope)
    {
        var name = _context.Name("g");
        var type = Random.From(IntegerType.All);
        Readable[] parameter = [new("a", type)];
        _context.Declarations.Block(
            $"static uint8_t {name}({type.Name} a)",
            () =>
            {
                _context.Declarations.Line($"if ({Condition(parameter)}) return {_context.Byte()};");
                _context.Declarations.Line($"if ({Condition(parameter)}) a = {Expression(parameter, 1)};");
                _context.Declarations.Line($"return {Expression(parameter, 2)};");
            }
        );
        text.Line($"{_sink} = {name}({Expression(scope, 1)}) & {_context.Byte()};");
    }

    private void Wide(SourceText text, IReadOnlyList<Readable> scope) =>
        text.Line(
            $"{_sink} = (((uint32_t)({Expression(scope, 1)}) * {Random.Between(3, 30000)}UL) >> {Random.Between(1, 20)}) {Random.Pick("&", "|", "^")} {_context.Byte()};"
        );

    // A test says something about the value: what follows must not claim more than that.
    private void Refine(SourceText text, IReadOnlyList<Readable> scope)
    {
        var value = Random.From(scope).Text;
        var constant = Random.Between(0, 120);
        text.Block(
            $"if ({value} {Random.Pick("<", "<=", ">", ">=", "==", "!=")} {constant} {Random.Pick("&&", "||")} ({value} & {_context.Byte()}) {Random.Pick("==", "!=")} {Random.Pick("0", "4", "16")})",
            () =>
                text.Line(
                    $"{_sink} = ({value} {Random.Pick("+", "-", "^", "|")} {Random.Below(90)}) >> {Random.Below(3)};"
                )
        );
    }

    private void Fields(SourceText text, IReadOnlyList<Readable> scope)
    {
        var name = _context.Name("f");
        text.Line(
            $"struct {{ uint8_t a : 3; int8_t b : 4; uint8_t c : 1; }} {name} = {{{Random.Below(8)}, {Random.Between(-8, 7)}, 1}};"
        );
        text.Line($"{name}.{Random.Pick("a", "b", "c")} = {Expression(scope, 1)};");
        text.Line($"{_sink} = {name}.a * 8 + {name}.b - {name}.c;");
    }

    private string Expression(IReadOnlyList<Readable> scope, int depth) =>
        _context.Expressions.Generate(scope, depth).Text;

    private string Condition(IReadOnlyList<Readable> scope) => _context.Expressions.Condition(scope, 2).Text;

    private int Bit() => Random.Below(6);
}
