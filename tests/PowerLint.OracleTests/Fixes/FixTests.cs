using System.Collections.Immutable;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.OracleTests;

/// <summary>
/// Every fix of every case in <c>tests/rules</c> and of the example is applied to a copy, by itself: the copy compiles, the
/// finding is gone, and there is none that was not there before.
/// </summary>
public sealed class FixTests
{
    private static readonly string Root = RepositoryRoot.Combine("tests", "rules");

    // What the cases' names begin with, for a run of some of them: rules, or beginnings of files' names (floating-pin/fr), by commas.
    private static readonly string[] Wanted = (Environment.GetEnvironmentVariable("POWERLINT_FIX_CASES") ?? "").Split(
        ','
    );

    public static TheoryData<string> Cases =>
        [
            .. Directory
                .EnumerateDirectories(Root)
                .Order(StringComparer.Ordinal)
                .SelectMany(folder => FirmwareCase.NamesIn(folder).Select(name => $"{Path.GetFileName(folder)}/{name}"))
                .Where(name => Wanted.Any(beginning => name.StartsWith(beginning, StringComparison.Ordinal))),
        ];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Each_fix_mends_its_finding_and_brings_no_other(string name)
    {
        var original = FirmwareCase.Load(Path.Combine(Root, name), ruleId: null);
        var before = CaseRun.Of(original).Rules;
        var known = before
            .Findings.Concat(before.Suppressed.Select(s => s.Finding))
            .SelectMany(Keys)
            .CountBy(key => key, StringComparer.Ordinal)
            .ToDictionary(StringComparer.Ordinal);
        var troubles = new List<string>();
        foreach (var finding in before.Findings.Where(finding => finding.Fix is not null))
        {
            using var copy = FixedCopy.Of(original, finding.Fix!);
            troubles.AddRange(copy.CompilerMessages());
            var after = CaseRun.Of(copy.Firmware).Rules;
            var left = after
                .Findings.Where(found => !IsRevealed(found, finding))
                .SelectMany(Keys)
                .CountBy(key => key, StringComparer.Ordinal)
                .ToDictionary(StringComparer.Ordinal);

            // A subject may have several findings of a rule, each with its fix: the clocks of two buses, say.
            troubles.AddRange(
                Keys(finding)
                    .Where(key => left.GetValueOrDefault(key) >= known[key])
                    .Select(key => $"still there: {key}\n{copy.Shown}")
            );
            troubles.AddRange(
                left.Keys.Where(key => !known.ContainsKey(key)).Select(key => $"new: {key}\n{copy.Shown}")
            );
        }

        Assert.True(troubles.Count == 0, string.Join('\n', troubles));
    }

    // As long as the instruction does nothing there is no sleep to find fault with; and what a shallow mode or a running
    // oscillator needs, the regulator for one, is too much only once they are gone. A change of clocks that comes about leaves
    // the old oscillator without a use, and pins that come out of their lock show what floats
    // among them; a peripheral whose settings count at last may draw current. A clock that goes to no pin may stop, in a deeper mode.
    private static bool IsRevealed(Finding found, Finding mended) =>
        (mended.RuleId, found.RuleId)
            is
                ("sleep-disabled", "shallow-sleep" or "peripheral-on-in-sleep" or "asleep-in-mode")
                or
                ("shallow-sleep" or "oscillator-kept-on", "full-power-regulator")
                or
                (
                    "locked-write",
                    "oscillator-kept-on"
                        or "peripheral-on-in-sleep"
                        or "floating-pin"
                        or "clock-output-on"
                )
                or
                ("clock-output-on", "shallow-sleep")
                or
                ("gated-write", "debug-kept-on");

    // What a finding is about, without its place: a fix moves lines.
    private static IEnumerable<string> Keys(Finding finding) =>
        finding.Subjects.DefaultIfEmpty("").Select(subject => $"{finding.RuleId} {subject}");
}
