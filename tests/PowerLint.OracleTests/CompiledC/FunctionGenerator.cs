using System.Globalization;

namespace PowerLint.OracleTests;

/// <summary>Writes programs of random pure functions over arguments of every width and sign, each called with several values.</summary>
internal static class FunctionGenerator
{
    private const int Functions = 15;
    private const int CallsEach = 4;

    /// <summary>Writes the program of a seed.</summary>
    public static string Generate(int seed)
    {
        var random = new RandomSource((ulong)seed + 0x10000);
        var expressions = new ExpressionGenerator(random, wide: true);
        var head = new SourceText();
        var main = new SourceText();
        head.Line("#include \"result.h\"");
        main.Block(
            "int main(void)",
            () =>
            {
                for (var index = 0; index < Functions; index++)
                {
                    Function(random, expressions, head, main, string.Create(CultureInfo.InvariantCulture, $"f{index}"));
                }

                main.Line("END();");
            }
        );
        return $"{head}\n{main}";
    }

    private static void Function(
        RandomSource random,
        ExpressionGenerator expressions,
        SourceText head,
        SourceText main,
        string name
    )
    {
        var result = random.From(IntegerType.All);
        Readable[] parameters =
        [
            new("a", random.From(IntegerType.All)),
            new("b", random.From(IntegerType.All)),
            new("c", random.From(IntegerType.All)),
        ];
        head.Block(
            $"F {result.Name} {name}({string.Join(", ", parameters.Select(p => $"{p.Type.Name} {p.Text}"))})",
            () =>
            {
                if (random.OneIn(2))
                {
                    head.Line(
                        $"if ({expressions.Condition(parameters, 3).Text}) return {expressions.Generate(parameters, 3).Text};"
                    );
                }

                if (random.OneIn(2))
                {
                    head.Line($"a = {expressions.Generate(parameters, 3).Text};");
                }

                head.Line($"return {expressions.Generate(parameters, 4).Text};");
            }
        );
        for (var call = 0; call < CallsEach; call++)
        {
            var arguments = parameters.Select(_ => expressions.Constant().Text);
            main.Line($"R({name}({string.Join(", ", arguments)}));");
        }
    }
}
