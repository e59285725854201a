using PowerLint.Program;

namespace PowerLint.Tests;

/// <summary>The front end alone: C in, program text out.</summary>
public sealed class LoweringTests
{
    public static TheoryData<string> Cases => new(LoweringCase.Names);

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_file_lowers_to_the_text_in_its_comments(string name)
    {
        var @case = LoweringCase.Load(name);
        ToolRequirement.Demand(@case.Needs);
        var result = @case.Read();
        Assert.Null(result.Failure);
        Assert.Empty(result.Errors);
        var unit = Assert.Single(result.Units);
        Assert.Empty(ProgramVerifier.Verify(unit));
        var text = LoweringCase.Text(unit);
        if (LoweringCase.Updates)
        {
            @case.Update(text);
        }

        Assert.NotEmpty(@case.Expected);
        Assert.Equal(@case.Expected, text);
    }

    [Fact]
    public void The_same_file_gives_the_same_text_again()
    {
        var @case = LoweringCase.Load("pointers.c");
        Assert.Equal(LoweringCase.Text(@case.Read().Units[0]), LoweringCase.Text(@case.Read().Units[0]));
    }
}
