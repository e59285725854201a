using System.Text.Json;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>The example's planted mistakes are found, each where it was planted and nothing else; its mended twin is clean.</summary>
public sealed class ExampleTests
{
    // The mistakes as they were planted by hand: file, line's text, rule, subjects.
    private static readonly (string File, string Statement, string Rule, string Subjects)[] Planted =
    [
        ("board.c", "CLKPR = 1 << CLKPS2;", "locked-write", "CLKPR"),
        ("board.c", "PORTB |= LAMP;", "load-driven-in-sleep", "PB1"),
        ("climate.c", "ADCSRA = (1 << ADEN) | (1 << ADPS1) | (1 << ADPS0);", "peripheral-on-in-sleep", "ADC"),
        ("climate.c", "ADMUX = (uint8_t)((1 << REFS0) | channel);", "analog-pin-buffer-on", "PC0 PC1"),
        ("climate.c", "while (ADCSRA & (1 << ADSC))", "polling-wait", "ADCSRA"),
        ("main.c", "board_init();", "clock-output-on", "CLKO PB0"),
        ("main.c", "board_init();", "floating-pin", "PC2 PC3 PC4 PC5"),
        ("main.c", "board_init();", "floating-pin", "PD5 PD6 PD7"),
        ("main.c", "board_init();", "peripheral-clock-left-on", "SPI TIMER0 TIMER1 TIMER2 TWI"),
        ("power.c", "sleep_now();", "sleep-disabled", "SLEEP"),
        ("radio.c", "UCSR0B = (1 << RXCIE0) | (1 << RXEN0) | (1 << TXEN0);", "asleep-in-mode", "USART0"),
        ("radio.c", "while (!(UCSR0A & (1 << UDRE0)))", "polling-wait", "UCSR0A"),
        ("scale.c", "delay_milliseconds(SETTLING_MILLISECONDS);", "busy-wait-delay", "scale_weigh()"),
    ];

    [Fact]
    public void The_planted_mistakes_are_found_and_nothing_else()
    {
        var folder = RepositoryRoot.Combine("examples", "hive-scale");
        var result = TestConsole.Run(folder, "check", "-p", ".", "--format", "json");

        Assert.Equal("", result.Error);
        Assert.Equal(1, result.Status);
        using var report = JsonDocument.Parse(result.Output);
        var found = report.RootElement.GetProperty("findings").EnumerateArray().Select(Found);
        Assert.Equal(string.Join('\n', Planted.Select(Describe)), string.Join('\n', found));

        string Found(JsonElement finding)
        {
            var file = finding.GetProperty("file").GetString()!;
            var line = File.ReadAllLines(Path.Combine(folder, file))[finding.GetProperty("line").GetInt32() - 1];
            var subjects = finding.GetProperty("subjects").EnumerateArray().Select(subject => subject.GetString());
            return Describe((file, line.Trim(), finding.GetProperty("rule").GetString()!, string.Join(' ', subjects)));
        }
    }

    [Fact]
    public void The_mended_twin_is_clean()
    {
        var folder = RepositoryRoot.Combine("examples", "hive-scale-mended");
        var result = TestConsole.Run(folder, "check", "-p", ".", "--fail-on", "note");

        Assert.Equal("", result.Error);
        Assert.Equal("No findings on atmega328p, 2 findings allowed in the source\n", result.Output);
        Assert.Equal(0, result.Status);
    }

    private static string Describe((string File, string Statement, string Rule, string Subjects) mistake) =>
        $"{mistake.File}: {mistake.Statement} {mistake.Rule} {mistake.Subjects}";
}
