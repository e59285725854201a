using PowerLint.Analysis;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>Calls that repeat earlier ones are done from memory; nothing but the time that it takes may tell.</summary>
public sealed class RepeatedCallsTests
{
    public static TheoryData<string> Folders =>
        [
            .. Directory
                .EnumerateDirectories(RepositoryRoot.Combine("tests", "rules"))
                .Where(folder => !string.Equals(Path.GetFileName(folder), "include", StringComparison.Ordinal))
                .Select(folder => Path.GetFileName(folder))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_case_comes_out_the_same_with_and_without_memory(string name)
    {
        var folder = RepositoryRoot.Combine("tests", "rules", name);
        Assert.All(
            FirmwareCase.NamesIn(folder),
            file =>
            {
                var firmware = FirmwareCase.Load(Path.Combine(folder, file), name);
                Assert.Equal(
                    AnalysisDigest.Lines(CaseRun.Of(firmware, repeatsCalls: false).Result),
                    AnalysisDigest.Lines(CaseRun.Of(firmware).Result)
                );
            }
        );
    }

    // The caller's own state is untouched where the call did not look.
    [Fact]
    public void A_call_done_from_memory_leaves_alone_what_it_did_not_touch()
    {
        var run = GeneratedFirmware.Run(
            "static void toggle(void) { PORTB ^= 1; } static void twice(void) { toggle(); toggle(); }"
                + "int main(void) { for (unsigned char i = 0; i < 7; i++) { DDRC |= 1 << i; twice(); } toggle(); SMCR = 1; for (;;) sleep(); }"
        );
        run.Expect(0, "DDRC", "01111111");
        run.Expect(0, "PORTB", "00000001");
    }

    [Fact]
    public void A_call_that_reads_what_has_changed_is_run_again()
    {
        var run = GeneratedFirmware.Run(
            "unsigned char pin; static void raise(void) { PORTB |= 1 << pin; }"
                + "int main(void) { for (pin = 0; pin < 6; pin++) { raise(); raise(); } SMCR = 1; for (;;) sleep(); }"
        );
        run.Expect(0, "PORTB", "00111111");
    }

    [Fact]
    public void A_wait_that_is_done_from_memory_is_noted_where_it_happens()
    {
        var run = GeneratedFirmware.Run(
            "static void pause(void) { for (volatile unsigned i = 0; i < 20000; i++) { } }"
                + "int main(void) { for (unsigned char i = 0; i < 5; i++) pause(); SMCR = 1; for (;;) { pause(); sleep(); } }"
        );
        Assert.Contains(run.Result!.BusyWaits, wait => wait.Context == RunContext.EndlessLoop);
    }
}
