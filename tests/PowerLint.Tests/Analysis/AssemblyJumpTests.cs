namespace PowerLint.Tests;

/// <summary>Jumps in inline assembly (AVR instruction set: IJMP goes where the Z pointer says, JMP to an address).</summary>
public sealed class AssemblyJumpTests
{
    [Theory]
    [InlineData("clr r30\\n clr r31\\n ijmp")]
    [InlineData("jmp 0")]
    [InlineData("jmp 0x0000")]
    public void A_jump_that_leaves_the_image_ends_the_way(string template)
    {
        var run = GeneratedFirmware.Run(
            $"int main(void) {{ if (PIND & 1) {{ PORTB = 0xFF; __asm__ __volatile__ (\"{template}\"); }} SMCR = 1; for (;;) sleep(); }}"
        );
        run.ExpectLimits("assembly-jump");
        run.Expect(0, "PORTB", "00000000");
        Assert.Empty(run.Result!.RestingPoints[0].State.UnknownCallees);
    }

    [Fact]
    public void A_jump_within_the_assembly_is_not_seen_into()
    {
        var run = GeneratedFirmware.Run(
            "int main(void) { __asm__ __volatile__ (\"1: rjmp 2f\\n 2:\"); SMCR = 1; for (;;) sleep(); }"
        );
        run.ExpectLimits("unknown-assembly");
        Assert.NotEmpty(run.Result!.RestingPoints[0].State.UnknownCallees);
    }
}
