using PowerLint.Program;

namespace PowerLint.Tests;

/// <summary>The verifier finds what is wrong with a program form.</summary>
public sealed class ProgramVerifierTests
{
    private static readonly IntegerType Byte = new(8, IsSigned: false);
    private static readonly IntegerType Int = new(16, IsSigned: true);
    private static readonly PointerType Pointer = new(16);
    private static readonly SourceRange Nowhere = SourceRange.None;

    public static TheoryData<string, Statement> Broken =>
        new()
        {
            { "break outside", new Break(Nowhere) },
            { "continue outside", new Switch(Nowhere, Constant(Int, 1), new Continue(Nowhere)) },
            { "case label outside", new CaseLabel(Nowhere, 1, 1, new Block(Nowhere, [])) },
            { "no label gone", new Goto(Nowhere, "gone") },
            { "label twice stands twice", new Block(Nowhere, [Label("twice"), Label("twice")]) },
            { "returns u8 as void", new Return(Nowhere, Constant(Byte, 1)) },
            { "256 does not fit u8", Evaluate(Constant(Byte, 256)) },
            {
                "value assigned of type i16, not u8",
                Evaluate(new Assignment(Byte, Nowhere, Address, Constant(Int, 1), false))
            },
            { "no pointer", Evaluate(new Load(Byte, Nowhere, Constant(Int, 1), false)) },
            { "outside its unit", Evaluate(new Load(Byte, Nowhere, Address, false, new BitField(6, 4, 8))) },
            {
                "right side of type u8, not i16",
                Evaluate(new BinaryOperation(Int, Nowhere, BinaryOperator.Add, Constant(Int, 1), Constant(Byte, 1)))
            },
            { "conversion to the same type", Evaluate(new Conversion(Int, Nowhere, Constant(Int, 1))) },
            {
                "lost is not declared",
                Evaluate(
                    new AddressOfVariable(
                        Pointer,
                        Nowhere,
                        new LocalVariable("lost", Int, isVolatile: false, Nowhere, isParameter: false)
                    )
                )
            },
        };

    private static Expression Address => new IntegerConstant(Pointer, Nowhere, 0x25);

    [Theory]
    [MemberData(nameof(Broken))]
    public void A_broken_statement_is_a_defect(string message, Statement statement)
    {
        var defect = Assert.Single(ProgramVerifier.Verify(Unit(statement)));
        Assert.Equal("f", defect.Function);
        Assert.Contains(message, defect.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_whole_statement_is_none()
    {
        var loop = new Loop(Nowhere, Constant(Int, 1), step: null, new Break(Nowhere), testsAfterBody: false);
        Assert.Empty(
            ProgramVerifier.Verify(Unit(new Block(Nowhere, [Label("here"), new Goto(Nowhere, "here"), loop])))
        );
    }

    private static IntegerConstant Constant(CType type, ulong value) => new(type, Nowhere, value);

    private static ExpressionStatement Evaluate(Expression expression) => new(Nowhere, expression);

    private static Label Label(string name) => new(Nowhere, name, new Block(Nowhere, []));

    private static TranslationUnit Unit(Statement statement)
    {
        var symbol = new FunctionSymbol("f", isStatic: false);
        var function = new Function(
            symbol,
            VoidType.Instance,
            [],
            isVariadic: false,
            new Block(Nowhere, [statement]),
            Nowhere
        );
        return new TranslationUnit(
            SourceFile.None,
            TargetLayout.Avr,
            [function],
            [],
            [symbol],
            new Dictionary<string, string>(StringComparer.Ordinal),
            [],
            []
        );
    }
}
