using System.Text.Json;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>The commands' own work: formats, files, exit statuses, lists.</summary>
public sealed class CommandTests
{
    private static readonly string Example = RepositoryRoot.Combine("examples", "hive-scale");

    [Theory]
    [InlineData("error", 1)]
    [InlineData("warning", 1)]
    [InlineData("note", 1)]
    [InlineData("none", 0)]
    public void Fail_on_decides_the_exit_status(string level, int status) =>
        Assert.Equal(status, TestConsole.Run(Example, "check", "-p", ".", "--fail-on", level).Status);

    [Fact]
    public void Notes_do_not_fail_by_default()
    {
        using var folder = new TemporaryFolder();
        folder.Write(
            "powerlint.yaml",
            "rules: { sleep-disabled: note, floating-pin: off, peripheral-clock-left-on: off }\n"
        );
        folder.Write("main.c", "int main(void)\n{\n    for (;;)\n        __asm__ __volatile__(\"sleep\");\n}\n");
        string[] check = ["check", "--device", "atmega328p", "--format", "json", "main.c"];
        var result = TestConsole.Run(folder.Path, check);

        using var report = JsonDocument.Parse(result.Output);
        var finding = Assert.Single(report.RootElement.GetProperty("findings").EnumerateArray());
        Assert.Equal("sleep-disabled", finding.GetProperty("rule").GetString());
        Assert.Equal("note", finding.GetProperty("level").GetString());
        Assert.Equal(0, result.Status);
        Assert.Equal(1, TestConsole.Run(folder.Path, [.. check, "--fail-on", "note"]).Status);
    }

    [Fact]
    public void The_device_comes_from_the_flags_where_nothing_else_names_it()
    {
        using var folder = new TemporaryFolder();
        folder.Write("main.c", "int main(void)\n{\n    for (;;)\n        ;\n}\n");
        var result = TestConsole.Run(folder.Path, "state", "--format", "json", "main.c", "--", "-mmcu=atmega88pa");

        Assert.Equal("", result.Error);
        using var state = JsonDocument.Parse(result.Output);
        Assert.Equal("atmega88pa", state.RootElement.GetProperty("device").GetString());
        var point = Assert.Single(state.RootElement.GetProperty("points").EnumerateArray());
        Assert.Equal("endless-loop", point.GetProperty("kind").GetString());
        Assert.Equal(0, result.Status);
    }

    [Fact]
    public void The_command_line_wins_over_the_configuration()
    {
        using var folder = new TemporaryFolder();
        folder.Write("powerlint.yaml", "device: atmega328p\n");
        folder.Write("main.c", "int main(void)\n{\n    for (;;)\n        ;\n}\n");
        var result = TestConsole.Run(folder.Path, "state", "--device", "atmega168p", "--format", "json", "main.c");

        using var state = JsonDocument.Parse(result.Output);
        Assert.Equal("atmega168p", state.RootElement.GetProperty("device").GetString());
    }

    [Fact]
    public void Output_goes_to_the_file_that_was_asked_for()
    {
        using var folder = new TemporaryFolder();
        var file = Path.Combine(folder.Path, "report.sarif");
        var result = TestConsole.Run(Example, "check", "-p", ".", "--format", "sarif", "--output", file);

        Assert.Equal("", result.Output);
        Assert.Equal(1, result.Status);
        using var report = JsonDocument.Parse(File.ReadAllText(file));
        Assert.Equal("2.1.0", report.RootElement.GetProperty("version").GetString());
    }

    [Fact]
    public void Findings_in_excluded_paths_are_not_reported()
    {
        using var folder = new TemporaryFolder();
        folder.Write("powerlint.yaml", "device: atmega328p\nexclude: [\"*.c\"]\n");
        folder.Write("main.c", "int main(void)\n{\n    for (;;)\n        __asm__ __volatile__(\"sleep\");\n}\n");
        Assert.Equal("No findings on atmega328p\n", TestConsole.Run(folder.Path, "check", "main.c").Output);
    }

    [Fact]
    public void Board_facts_and_suppressions_settle_findings()
    {
        using var folder = new TemporaryFolder();
        const string source = """
            #define DDRB (*(volatile unsigned char *)0x24)
            #define DDRC (*(volatile unsigned char *)0x27)
            #define DDRD (*(volatile unsigned char *)0x2A)
            int main(void)
            {
                DDRC = 0x3F;
                DDRD = 0xFF;
                DDRB = 0xFE;
                for (;;)
                    __asm__ __volatile__("sleep"); // powerlint: allow sleep-disabled (a bench build that must not sleep)
            }
            """;
        folder.Write("main.c", source);
        string[] check = ["check", "--device", "atmega328p", "main.c"];
        Assert.Contains("PB0", TestConsole.Run(folder.Path, check).Output, StringComparison.Ordinal);

        folder.Write(
            "powerlint.yaml",
            "board: { pins: { PB0: { pull: up, ohms: 10000 } } }\nrules: { peripheral-clock-left-on: off }\n"
        );
        var settled = TestConsole.Run(folder.Path, check);
        Assert.Equal("No findings on atmega328p, 1 finding allowed in the source\n", settled.Output);
        Assert.Equal(0, settled.Status);
    }

    [Fact]
    public void Rules_lists_every_rule()
    {
        var result = TestConsole.Run(RepositoryRoot.Path, "rules");
        Assert.Equal(0, result.Status);
        foreach (var rule in RuleCatalog.All)
        {
            Assert.Contains($"  {rule.Id} ", result.Output, StringComparison.Ordinal);
            Assert.Contains(rule.Summary, result.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Explain_prints_the_page()
    {
        var rule = RuleCatalog.All[0];
        var result = TestConsole.Run(RepositoryRoot.Path, "explain", rule.Id);
        Assert.Equal(0, result.Status);
        Assert.Contains(rule.Page.TrimEnd(), result.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_shows_the_examples_of_the_device()
    {
        using var folder = new TemporaryFolder();
        var rule = RuleCatalog.Find("floating-pin")!;
        string[] explain = ["explain", rule.Id];
        var classic = TestConsole.Run(folder.Path, [.. explain, "--device", "atmega328p"]);

        Assert.Equal("", classic.Error);
        Assert.Contains("// device: atmega328p", classic.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("### STM32", classic.Output, StringComparison.Ordinal);
        Assert.Contains("--all", classic.Output, StringComparison.Ordinal);

        folder.Write("powerlint.yaml", "device: stm32l053xx\n");
        var configured = TestConsole.Run(folder.Path, explain);
        Assert.Contains("### STM32", configured.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("atmega328p", configured.Output, StringComparison.Ordinal);
        Assert.Contains(
            rule.Page.TrimEnd(),
            TestConsole.Run(folder.Path, [.. explain, "--all"]).Output,
            StringComparison.Ordinal
        );

        var unknown = TestConsole.Run(folder.Path, [.. explain, "--device", "atmega328x"]);
        Assert.NotEqual(0, unknown.Status);
        Assert.Contains("atmega328p", unknown.Error, StringComparison.Ordinal);
    }

    // From the part's datasheet: 23 pads on three ports, and the modes and vectors as its sleep table has them (from memory).
    [Fact]
    public void Devices_prints_what_the_datasheet_is_paged_through_for()
    {
        var list = TestConsole.Run(RepositoryRoot.Path, "devices");
        Assert.Contains(" atmega328p", list.Output, StringComparison.Ordinal);

        var device = TestConsole.Run(RepositoryRoot.Path, "devices", "ATmega328P");
        Assert.Equal(0, device.Status);
        var lines = device.Output.Split('\n');
        Assert.Contains(
            lines,
            line => line.StartsWith("  C     PC0 PC1 PC2 PC3 PC4 PC5 PC6", StringComparison.Ordinal)
        );
        Assert.Contains(lines, line => line.StartsWith("  power-down ", StringComparison.Ordinal));
        var watchdog = Assert.Single(lines, line => line.StartsWith("  WDT_vect ", StringComparison.Ordinal));
        Assert.Equal(6, watchdog.Count(letter => letter == '*'));
        var receiver = Assert.Single(lines, line => line.StartsWith("  USART_RX_vect ", StringComparison.Ordinal));
        Assert.Equal(1, receiver.Count(letter => letter == '*'));
        Assert.Contains("Supply current", device.Output, StringComparison.Ordinal);
        // From data sheet 8271H, tables of start-up times: a crystal of the low power oscillator, CKSEL0 = 1, SUT = 11.
        Assert.Contains(
            lines,
            line =>
                line.StartsWith("  power-save, power-down ", StringComparison.Ordinal)
                && line.Contains("16384 cycles of main and 4 of the CPU", StringComparison.Ordinal)
                && line.Contains("LFUSE.CKSEL = 7/9/11/13/15 and LFUSE[5:4] = 1..3", StringComparison.Ordinal)
        );
    }

    // The firmware and its database are not trusted: a program that they name must never run.
    [Theory]
    [InlineData("\"command\": \"./avr-gcc -mmcu=atmega328p -c main.c\"")]
    [InlineData("\"command\": \"FOLDER/avr-gcc -mmcu=atmega328p -c main.c\"")]
    [InlineData("\"arguments\": [\"FOLDER/avr-gcc\", \"-mmcu=atmega328p\", \"-c\", \"main.c\"]")]
    [InlineData("\"command\": \"$(FOLDER/avr-gcc) -mmcu=atmega328p `FOLDER/avr-gcc` -c main.c ; FOLDER/avr-gcc\"")]
    public void A_program_that_the_database_names_is_never_run(string entry)
    {
        if (!OperatingSystem.IsLinux())
        {
            Assert.Skip("needs a shell script");
            return;
        }

        using var folder = new TemporaryFolder();
        var marker = Path.Combine(folder.Path, "was-run");
        var script = folder.Write("avr-gcc", $"#!/bin/sh\ntouch '{marker}'\n");
        File.SetUnixFileMode(script, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        folder.Write("main.c", "int main(void)\n{\n    for (;;)\n        ;\n}\n");
        folder.Write(
            "compile_commands.json",
            "[{ \"directory\": \".\", \"file\": \"main.c\", "
                + entry.Replace("FOLDER", folder.Path, StringComparison.Ordinal)
                + " }]"
        );
        var result = TestConsole.Run(folder.Path, "check", "--device", "atmega328p", "-p", ".");

        Assert.False(File.Exists(marker), "the program was run");
        Assert.NotEqual(2, result.Status);
    }
}
