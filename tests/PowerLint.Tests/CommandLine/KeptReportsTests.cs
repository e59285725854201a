using PowerLint.CommandLine;

namespace PowerLint.Tests;

/// <summary>
/// Reports that are kept from one check to the next: used where nothing has changed, never where anything has. Whether one was used is
/// told by the stages that <c>--verbose</c> names.
/// </summary>
public sealed class KeptReportsTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public KeptReportsTests()
    {
        _folder.Write("lamp.h", "#include <avr/io.h>\n#define LAMP 3\n");
        _folder.Write(
            "main.c",
            "#include \"lamp.h\"\nvoid pins(void);\nint main(void) { pins(); for (;;) __asm__ volatile(\"sleep\"); }\n"
        );
        _folder.Write("pins.c", "#include \"lamp.h\"\nvoid pins(void) { DDRB = 1 << LAMP; SMCR = 5; }\n");
        _folder.Write("powerlint.yaml", "supply-volts: 3.0\n");
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("text")]
    [InlineData("json")]
    [InlineData("sarif")]
    public void An_unchanged_check_says_the_same_without_an_analysis(string format)
    {
        var first = Check("--format", format);
        var second = Check("--format", format);

        Assert.True(IsAnalysed(first));
        Assert.False(IsAnalysed(second));
        Assert.Equal((1, first.Output), (first.Status, second.Output));
        Assert.Equal(first.Status, second.Status);
    }

    [Theory]
    [InlineData("pins.c", "#include \"lamp.h\"\nvoid pins(void) { DDRB = 2 << LAMP; SMCR = 5; }\n")]
    [InlineData("lamp.h", "#include <avr/io.h>\n#define LAMP 4\n")]
    [InlineData("powerlint.yaml", "supply-volts: 5.0\n")]
    public void A_change_in_sources_headers_or_settings_is_seen(string file, string content)
    {
        _ = Check();
        _folder.Write(file, content);

        var changed = Check();
        Assert.True(IsAnalysed(changed));
        Assert.Equal(Check("--no-cache").Output, changed.Output);
        Assert.False(IsAnalysed(Check()));
    }

    [Fact]
    public void Another_command_line_is_another_check()
    {
        _ = Check();
        Assert.True(IsAnalysed(Check("--fail-on", "error")));
        Assert.True(IsAnalysed(Check("--format", "json")));
        Assert.True(IsAnalysed(Run(isTerminal: true)));
        Assert.True(IsAnalysed(Check("--no-cache")));
        Assert.False(IsAnalysed(Check()));
    }

    [Fact]
    public void A_report_for_a_file_is_written_again_with_its_notices()
    {
        var output = Path.Combine(_folder.Path, "report.json");
        var first = Check("--format", "json", "-o", output);
        var written = File.ReadAllText(output);
        File.Delete(output);

        var second = Check("--format", "json", "-o", output);
        Assert.False(IsAnalysed(second));
        Assert.Equal(written, File.ReadAllText(output));
        Assert.Equal(Notices(first), Notices(second));
    }

    [Fact]
    public void Fixes_and_baselines_always_look_at_the_firmware_itself()
    {
        var baseline = Path.Combine(_folder.Path, "before.sarif");
        _ = Check("--format", "sarif", "-o", baseline);
        foreach (var _ in (int[])[1, 2])
        {
            Assert.True(IsAnalysed(Check("--baseline", baseline)));
            Assert.True(IsAnalysed(Check("--fix", "--dry-run")));
        }
    }

    [Fact]
    public void Sources_with_errors_are_read_anew_each_time()
    {
        _folder.Write("pins.c", "#include \"lamp.h\"\nvoid pins(void) { DDRB = ; }\n");
        Assert.Equal(ExitStatus.Incomplete, Check().Status);
        Assert.True(IsAnalysed(Check()));
    }

    [Fact]
    public void A_broken_entry_is_no_report()
    {
        var first = Check();
        foreach (var entry in Directory.EnumerateFiles(Reports, "*", SearchOption.AllDirectories))
        {
            var bytes = File.ReadAllBytes(entry);
            bytes[^2] ^= 1;
            File.WriteAllBytes(entry, bytes);
        }

        var second = Check();
        Assert.True(IsAnalysed(second));
        Assert.Equal(first.Output, second.Output);
    }

    private string Reports => Path.Combine(_folder.Path, "cache", "reports");

    private static bool IsAnalysed(CommandResult result) =>
        result.Error.Contains("  analysis", StringComparison.Ordinal);

    private static string Notices(CommandResult result) =>
        string.Join('\n', result.Error.Split('\n').Where(line => !line.Contains(" ms  ", StringComparison.Ordinal)));

    private CommandResult Check(params string[] more) => Run(isTerminal: false, more);

    private CommandResult Run(bool isTerminal, params string[] more)
    {
        var console = new TestConsole(_folder.Path, isTerminal) { CacheFolder = Path.Combine(_folder.Path, "cache") };
        var status = CommandTree.Run(
            ["check", "main.c", "pins.c", "--verbose", .. more, "--", "avr-gcc", "-mmcu=atmega328p", "-Os"],
            console,
            TestContext.Current.CancellationToken
        );
        return new CommandResult(status, console.OutputText, console.ErrorText);
    }
}
