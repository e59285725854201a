using System.Text.Json;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>
/// What a handler leaves in the saved status register decides whether the program goes on (MSP430x2xx family guide SLAU144,
/// section Entering and Exiting Low-Power Modes, from memory). Headers: Debian's msp430mcu.
/// </summary>
public sealed class StatusOnExitTests
{
    private const string Program = """
        #include <msp430.h>
        __attribute__((interrupt(PORT1_VECTOR))) void pressed(void) { P1IFG = 0; EXIT }
        int main(void)
        {
            WDTCTL = WDTPW | WDTHOLD;
            P1DIR = 0xF7; P1REN = 8; P1OUT = 8; P2SEL = 0; P2DIR = 0xFF;
            P1IE = 8;
            __bis_status_register(LPM4_bits | GIE);
            P2OUT = 0x55;
            __bis_status_register(LPM3_bits | GIE);
            for (;;) { }
        }
        """;

    [Theory]
    [InlineData("", 1)]
    [InlineData("__bic_status_register_on_exit(LPM4_bits);", 2)]
    public void The_program_goes_on_only_where_the_handler_clears_the_saved_bits(string exit, int sleeps)
    {
        using var folder = new TemporaryFolder();
        folder.Write("main.c", Program.Replace("EXIT", exit, StringComparison.Ordinal));
        var result = TestConsole.Run(
            folder.Path,
            "state",
            "--format",
            "json",
            "main.c",
            "--",
            "-mmcu=msp430g2553",
            "-Os",
            "-isystem",
            "/usr/msp430/include"
        );
        Assert.True(result.Output.Length > 0, result.Error);
        using var state = JsonDocument.Parse(result.Output);
        var points = state.RootElement.GetProperty("points").EnumerateArray().ToArray();
        Assert.Equal(
            sleeps,
            points.Count(point =>
                string.Equals(point.GetProperty("kind").GetString(), "sleep", StringComparison.Ordinal)
            )
        );
        if (sleeps == 2)
        {
            Assert.Equal(
                "0x55",
                points[1].GetProperty("registers").GetProperty("P2OUT").GetProperty("value").GetString()
            );
        }
    }

    [Fact]
    public void A_handler_that_stops_the_cpu_at_its_return_does_so_wherever_it_came()
    {
        using var folder = new TemporaryFolder();
        folder.Write(
            "main.c",
            """
            #include <msp430.h>
            static void step(void) { P1OUT ^= BIT6; P1OUT |= BIT0; }
            __attribute__((interrupt(PORT1_VECTOR))) void lid(void) { P1IFG = 0; __bis_status_register_on_exit(LPM3_bits); }
            int main(void) { WDTCTL = WDTPW | WDTHOLD; P1DIR = 0xF7; P1OUT = 8; P1IE = 8; __enable_interrupt(); for (;;) step(); }
            """
        );
        var result = TestConsole.Run(
            folder.Path,
            "state",
            "--format",
            "json",
            "main.c",
            "--",
            "-mmcu=msp430g2553",
            "-isystem",
            "/usr/msp430/include"
        );
        using var state = JsonDocument.Parse(result.Output);
        var seen = state
            .RootElement.GetProperty("points")
            .EnumerateArray()
            .Select(point => point.GetProperty("registers").GetProperty("P1OUT"))
            .Select(output => (output.GetProperty("known").GetString(), output.GetProperty("value").GetString()))
            .ToArray();
        Assert.Contains(seen, output => output is not ("0xff", "0x08"));
    }
}
