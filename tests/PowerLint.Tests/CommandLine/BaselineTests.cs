using System.Text.Json;

namespace PowerLint.Tests;

/// <summary>An earlier SARIF report makes old findings pass and new ones fail.</summary>
public sealed class BaselineTests
{
    private const string Source = """
        #include <avr/io.h>
        #include <avr/sleep.h>

        int main(void)
        {
            DDRB = 0xff;
            DDRC = 0x7f;
            DDRD = 0xfc;
            set_sleep_mode(SLEEP_MODE_IDLE);
            for (;;) {
                sleep_cpu();
            }
        }

        """;

    private static readonly string[] Check =
    [
        "check",
        "--device",
        "atmega328p",
        "main.c",
        "--format",
        "sarif",
        "--baseline",
        "before.sarif",
    ];

    [Fact]
    public void Old_findings_are_unchanged_and_do_not_fail()
    {
        using var folder = Before();
        folder.Write("main.c", "/* A comment that moves every line. */\n\n" + Source);
        var result = TestConsole.Run(folder.Path, Check);

        Assert.Equal(0, result.Status);
        Assert.Equal(["unchanged"], States(result).Values.Distinct());
        Assert.NotEmpty(States(result));
    }

    [Fact]
    public void New_findings_fail_and_gone_ones_are_absent()
    {
        using var folder = Before();
        folder.Write(
            "main.c",
            Source
                .Replace("DDRB = 0xff;", "DDRB = 0x7f;", StringComparison.Ordinal)
                .Replace("DDRD = 0xfc;", "DDRD = 0xff;", StringComparison.Ordinal)
        );
        var result = TestConsole.Run(folder.Path, Check);

        Assert.Equal(1, result.Status);
        var states = States(result);
        Assert.Equal("new", states["floating-pin PB7"]);
        Assert.Equal("absent", states["floating-pin PD0 PD1"]);
        Assert.Equal("unchanged", states["sleep-disabled SLEEP"]);
        Assert.Empty(Validate(result.Output));

        // What is absent from one report is not looked for again with the next one.
        folder.Write("before.sarif", result.Output);
        var next = TestConsole.Run(folder.Path, Check);
        Assert.Equal(0, next.Status);
        Assert.Equal(["unchanged"], States(next).Values.Distinct());
    }

    [Fact]
    public void Text_and_json_say_the_same()
    {
        using var folder = Before();
        folder.Write("main.c", Source.Replace("DDRB = 0xff;", "DDRB = 0x7f;", StringComparison.Ordinal));
        string[] check = ["check", "--device", "atmega328p", "main.c", "--baseline", "before.sarif"];
        var text = TestConsole.Run(folder.Path, check);
        Assert.Contains("against before.sarif: 1 new, ", text.Output, StringComparison.Ordinal);
        Assert.Contains("    baseline  new\n", text.Output, StringComparison.Ordinal);

        using var json = JsonDocument.Parse(TestConsole.Run(folder.Path, [.. check, "--format", "json"]).Output);
        var fresh = json
            .RootElement.GetProperty("findings")
            .EnumerateArray()
            .Where(finding => finding.GetProperty("baseline").GetString() == "new");
        Assert.Equal("PB7", Assert.Single(fresh).GetProperty("subjects")[0].GetString());
        Assert.Equal(0, json.RootElement.GetProperty("absent").GetInt32());
    }

    [Fact]
    public void Allowed_findings_stay_allowed_and_never_fail()
    {
        using var folder = Before();
        folder.Write(
            "main.c",
            Source.Replace(
                "DDRB = 0xff;",
                "DDRB = 0x7f; // powerlint: allow floating-pin (the lid switch drives it)",
                StringComparison.Ordinal
            )
        );
        var result = TestConsole.Run(folder.Path, Check);
        Assert.Equal(0, result.Status);
        using var document = JsonDocument.Parse(result.Output);
        var allowed = Assert.Single(
            document.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray(),
            one => one.TryGetProperty("suppressions", out _)
        );
        Assert.Equal(
            "the lid switch drives it",
            allowed.GetProperty("suppressions")[0].GetProperty("justification").GetString()
        );
    }

    [Fact]
    public void The_same_runs_give_the_same_bytes()
    {
        using var folder = Before();
        folder.Write("main.c", Source.Replace("DDRB = 0xff;", "DDRB = 0x7f;", StringComparison.Ordinal));
        Assert.Equal(TestConsole.Run(folder.Path, Check).Output, TestConsole.Run(folder.Path, Check).Output);
    }

    private static TemporaryFolder Before()
    {
        if (!Directory.Exists("/usr/lib/avr/include/avr"))
        {
            Assert.Skip("needs the headers of Debian's avr-libc");
        }

        var folder = new TemporaryFolder();
        folder.Write("main.c", Source);
        string[] write = ["check", "-d", "atmega328p", "main.c", "-f", "sarif", "-o", "before.sarif"];
        Assert.Equal(1, TestConsole.Run(folder.Path, write).Status);
        return folder;
    }

    private static SortedDictionary<string, string> States(CommandResult result)
    {
        Assert.Equal("", result.Error);
        using var document = JsonDocument.Parse(result.Output);
        var states = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var one in document.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray())
        {
            var subjects = one.GetProperty("properties").GetProperty("subjects").EnumerateArray();
            var name = string.Join(' ', subjects.Select(subject => subject.GetString()));
            states.Add(
                $"{one.GetProperty("ruleId").GetString()} {name}",
                one.GetProperty("baselineState").GetString()!
            );
        }

        return states;
    }

    private static IEnumerable<string> Validate(string sarif)
    {
        using var document = JsonDocument.Parse(sarif);
        return SarifTests.Faults(document);
    }
}
