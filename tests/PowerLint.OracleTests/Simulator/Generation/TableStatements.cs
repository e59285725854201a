using System.Globalization;

namespace PowerLint.OracleTests;

/// <summary>Level 2: tables, pointers to registers, arrays.</summary>
internal sealed class TableStatements(GenerationContext context)
{
    private RandomSource Random => context.Random;

    /// <summary>The kinds of statement.</summary>
    public IEnumerable<Action<SourceText, Scope, int>> Kinds =>
        [RowTable, RowTable, ParallelTables, PortPointer, Walk, LocalArray, Grid, PointerToPointer, Block];

    private void RowTable(SourceText text, Scope scope, int depth)
    {
        var (table, index) = (context.Name("rows"), context.Name("r"));
        var count = Random.Between(2, 5);
        var rows = Enumerable
            .Range(0, count)
            .Select(_ => $"{{&{context.Register()}, {context.Byte()}, {context.Byte()}}}");
        context.Declarations.Line(
            $"static {(Random.OneIn(3) ? "" : "const ")}struct {{ volatile uint8_t *reg; uint8_t set, clear; }} {table}[] = {{{string.Join(", ", rows)}}};"
        );
        string[] bodies =
        [
            $"*{table}[{index}].reg |= {table}[{index}].set;",
            $"*{table}[{index}].reg &= ~{table}[{index}].clear;",
            $"*{table}[{index}].reg = ({table}[{index}].set ^ {index}) & ~{table}[{index}].clear;",
            $"if ({table}[{index}].set > {table}[{index}].clear) *{table}[{index}].reg ^= {table}[{index}].set;",
        ];
        text.Block(
            $"for (uint8_t {index} = 0; {index} < sizeof {table} / sizeof {table}[0]; {index}++)",
            () =>
            {
                text.Line(Random.Pick<string>(bodies));
                text.Line(Random.Pick<string>(bodies));
            }
        );
    }

    private void ParallelTables(SourceText text, Scope scope, int depth)
    {
        var (registers, values, index) = (context.Name("regs"), context.Name("values"), context.Name("k"));
        var count = Random.Between(2, 6);
        context.Declarations.Line(
            $"static volatile uint8_t *const {registers}[{count}] = {{{Join(count, () => "&" + context.Register())}}};"
        );
        context.Declarations.Line($"static const uint8_t {values}[] = {{{Join(count, context.Byte)}}};");
        text.Line(
            $"for (int {index} = 0; {index} < {count}; {index}++) *{registers}[{index}] {Random.Pick("=", "|=", "^=", "&=")} {values}[{Random.Pick(index, $"{count - 1} - {index}")}];"
        );
    }

    private void PortPointer(SourceText text, Scope scope, int depth)
    {
        // Direction, port and input register stand side by side: input, direction, port.
        var pointer = context.Name("p");
        var port = Random.From(context.Part.Ports);
        var isPort = Random.OneIn(2);
        text.Line($"volatile uint8_t *{pointer} = &{(isPort ? "PORT" : "DDR")}{port};");
        var (direction, level) = isPort ? ($"{pointer}[-1]", $"*{pointer}") : ($"*{pointer}", $"*({pointer} + 1)");
        text.Line($"{direction} {Random.Pick("|=", "=", "&=", "^=")} {Value(scope)};");
        text.Line($"{level} {Random.Pick("|=", "=", "&= ~", "^=")} {Value(scope)};");
        if (Random.OneIn(3))
        {
            text.Line(isPort ? $"*--{pointer} |= {context.Byte()};" : $"*{pointer}++ ^= {context.Byte()};");
            text.Line($"*{pointer} ^= {context.Byte()};");
        }
    }

    private void Walk(SourceText text, Scope scope, int depth)
    {
        var (table, pointer, sum) = (context.Name("data"), context.Name("q"), context.Name("s"));
        var count = Random.Between(2, 7);
        context.Declarations.Line($"static const uint8_t {table}[{count}] = {{{Join(count, context.Byte)}}};");
        text.Line($"uint8_t {sum} = {context.Byte()};");
        text.Line(
            $"for (const uint8_t *{pointer} = {table}; {Random.Pick($"{pointer} < {table} + {count}", $"{pointer} != &{table}[{count}]", $"{pointer} - {table} < {count}")}; {pointer}++)"
        );
        text.Line(
            $"    {sum} = {Random.Pick($"({sum} << 1) ^ *{pointer}", $"{sum} + *{pointer}", $"{sum} ^ ({pointer}[0] >> 1)")};"
        );
        text.Line($"{context.Register()} = {sum};");
        scope.Readables.Add(new Readable(sum, IntegerType.U8));
    }

    private void LocalArray(SourceText text, Scope scope, int depth)
    {
        var array = context.Name("a");
        var size = Random.Pick(2, 4, 8);
        var type = Random.From(context.Level >= 3 ? IntegerType.All : [IntegerType.U8, IntegerType.U16]);
        text.Line(
            $"{type.Name} {array}[{size}] = {{{Join(size, () => Random.Below(120).ToString(CultureInfo.InvariantCulture))}}};"
        );
        for (var times = Random.Between(1, 3); times > 0; times--)
        {
            text.Line($"{array}[{Index()}] {Random.Pick("=", "|=", "^=")} {Value(scope)};");
        }

        text.Line($"{context.Register()} = {array}[{Index()}];");
        scope.Readables.Add(new Readable($"{array}[{Random.Below(size)}]", type));

        string Index() => Random.OneIn(2) ? $"{Random.Below(size)}" : $"({Value(scope)}) & {size - 1}";
    }

    private void Grid(SourceText text, Scope scope, int depth)
    {
        var (table, row, column) = (context.Name("grid"), context.Name("y"), context.Name("x"));
        var (rows, columns) = (Random.Between(2, 3), Random.Between(2, 4));
        context.Declarations.Line(
            $"static const uint8_t {table}[{rows}][{columns}] = {{{Join(rows, () => "{" + Join(columns, context.Byte) + "}")}}};"
        );
        var register = context.Register();
        text.Block(
            $"for (uint8_t {row} = 0; {row} < {rows}; {row}++)",
            () =>
                text.Line(
                    $"for (uint8_t {column} = 0; {column} < {columns}; {column}++) {register} = ({register} << 1) ^ {table}[{row}][{column}];"
                )
        );
    }

    private void PointerToPointer(SourceText text, Scope scope, int depth)
    {
        var (first, second) = (context.Name("p"), context.Name("pp"));
        text.Line($"volatile uint8_t *{first} = &{context.Register()};");
        text.Line($"volatile uint8_t **{second} = &{first};");
        text.Line($"**{second} = {Value(scope)};");
        text.Line($"*{second} = &{context.Register()};");
        text.Line($"*{first} {Random.Pick("|=", "^=", "=")} {Value(scope)};");
    }

    private void Block(SourceText text, Scope scope, int depth)
    {
        var (from, to) = (context.Name("b"), context.Name("c"));
        var size = Random.Between(3, 6);
        text.Line($"uint8_t {from}[{size}], {to}[{size}];");
        text.Line($"memset({to}, {context.Byte()}, sizeof {to});");
        text.Line($"memset({from}, 0, {size});");
        text.Line($"{from}[{Random.Below(size)}] = {Value(scope)};");
        text.Line($"{from}[{Random.Below(size)}] = {context.Byte()};");
        text.Line($"memcpy({to} + 1, {from}, {size - 1});");
        text.Line($"{context.Register()} = {to}[{Random.Below(size)}] ^ {to}[{Random.Below(size)}];");
    }

    private string Value(Scope scope) => context.Expressions.Generate(scope.Readables, 1).Text;

    private static string Join(int count, Func<string> each) =>
        string.Join(", ", Enumerable.Range(0, count).Select(_ => each()));
}
