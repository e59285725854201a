using PowerLint.Program;

namespace PowerLint.Tests;

/// <summary>Lowered units survive being written and read, and bytes that are no unit's are refused.</summary>
public sealed class UnitSerializerTests
{
    public static TheoryData<string> Cases => new(LoweringCase.Names);

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_unit_reads_back_as_it_was_written(string name)
    {
        var unit = Lowered(name);
        var read = UnitSerializer.Read(UnitSerializer.Write(unit));

        Assert.Null(new GraphComparison().Difference(unit, read));
        Assert.Equal(LoweringCase.Text(unit), LoweringCase.Text(read));
        Assert.Empty(ProgramVerifier.Verify(read));
        Assert.Equal(UnitSerializer.Write(unit), UnitSerializer.Write(read));
    }

    [Fact]
    public void Every_kind_of_node_and_type_is_among_them()
    {
        var comparison = new GraphComparison();
        foreach (var name in LoweringCase.Names.Where(IsAtHand))
        {
            var unit = Lowered(name);
            Assert.Null(comparison.Difference(unit, UnitSerializer.Read(UnitSerializer.Write(unit))));
        }

        Type[] bases =
        [
            typeof(Statement),
            typeof(Expression),
            typeof(CType),
            typeof(Variable),
            typeof(InitializerEntry),
        ];
        var all = typeof(Statement)
            .Assembly.GetTypes()
            .Where(type => !type.IsAbstract && Array.Exists(bases, type.IsSubclassOf));
        Assert.Equal([], all.Except(comparison.Met).Select(type => type.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_node_in_two_places_stays_one_node()
    {
        var constant = new IntegerConstant(new IntegerType(16, IsSigned: true), SourceRange.None, 7);
        var sum = new BinaryOperation(constant.Type, SourceRange.None, BinaryOperator.Add, constant, constant);
        var symbol = new FunctionSymbol("f", isStatic: false);
        symbol.Definition = new Function(
            symbol,
            VoidType.Instance,
            [],
            isVariadic: false,
            new Block(SourceRange.None, [new ExpressionStatement(SourceRange.None, sum)]),
            SourceRange.None
        );
        var unit = new TranslationUnit(
            new SourceFile("/a.c", IsSystem: false),
            TargetLayout.Avr,
            [symbol.Definition],
            [],
            [symbol],
            new Dictionary<string, string>(StringComparer.Ordinal),
            [],
            []
        );

        var read = UnitSerializer.Read(UnitSerializer.Write(unit));
        var operation = (BinaryOperation)((ExpressionStatement)read.Functions[0].Body.Statements[0]).Expression;
        Assert.Same(operation.Left, operation.Right);
    }

    [Fact]
    public void Bytes_that_are_no_unit_are_refused_and_nothing_worse()
    {
        var random = new Random(20);
        foreach (var name in (string[])["pointers.c", "statement-expressions.c", "assembly.c", "initializers.c"])
        {
            var bytes = UnitSerializer.Write(Lowered(name));
            for (var i = 0; i < 1500; i++)
            {
                var broken = (byte[])bytes.Clone();
                for (var changes = random.Next(1, 4); changes > 0; changes--)
                {
                    broken[random.Next(broken.Length)] = (byte)random.Next(256);
                }

                Try(broken);
                Try(bytes[..random.Next(bytes.Length)]);
            }
        }

        static void Try(byte[] bytes)
        {
            try
            {
                _ = UnitSerializer.Read(bytes);
            }
            catch (InvalidDataException)
            {
                // As it should be. A change may also hit a number that means something else now: then the unit is another one.
            }
        }
    }

    private static bool IsAtHand(string name) =>
        LoweringCase.Load(name).Needs is not { } tool || ToolRequirement.IsOnPath(tool);

    private static TranslationUnit Lowered(string name)
    {
        var @case = LoweringCase.Load(name);
        ToolRequirement.Demand(@case.Needs);
        return Assert.Single(@case.Read().Units);
    }
}
