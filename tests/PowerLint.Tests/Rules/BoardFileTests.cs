using System.Collections.Immutable;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>A board file that says of every pin what it is wired to leaves nothing that depends on the board.</summary>
public sealed class BoardFileTests
{
    private static readonly string Root = RepositoryRoot.Combine("tests", "rules", "floating-pin");

    private static readonly ImmutableArray<BoardPin> Wirings =
    [
        new(Driven: WireLevel.Either),
        new(Pull: WireLevel.High, PullOhms: 10_000),
        new(IsConnected: false),
        new(Load: "lamp", Active: WireLevel.High, Milliamps: 2),
    ];

    public static TheoryData<string> Cases => [.. FirmwareCase.NamesIn(Root)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void With_a_complete_board_file_nothing_depends_on_the_board(string name)
    {
        var firmware = FirmwareCase.Load(Path.Combine(Root, name), ruleId: null);
        var run = CaseRun.Of(firmware);
        var open = run.Rules.Findings.Where(finding => finding.Certainty == Certainty.BoardDependent).ToArray();
        foreach (var wiring in open.Length == 0 ? [] : Wirings)
        {
            var pins = run.Result.Device.Pins.ToImmutableDictionary(
                pin => pin.Name,
                _ => wiring,
                StringComparer.Ordinal
            );
            var complete = firmware with
            {
                Header = firmware.Header with
                {
                    Board = firmware.Header.Board with
                    {
                        Pins = pins,
                        FittedRegulators = run.Result.Device.Regulators.ToImmutableDictionary(
                            regulator => regulator.Name,
                            regulator => wiring.IsConnected,
                            StringComparer.Ordinal
                        ),
                    },
                },
            };
            var findings = CaseRun.Of(complete).Rules.Findings;

            Assert.DoesNotContain(findings, finding => finding.Certainty == Certainty.BoardDependent);

            if (!open.Any(finding => finding.RuleId is "floating-pin"))
            {
                continue;
            }

            // What nothing drives or pulls floats for sure, and what something does, does not.
            var floats = findings.Any(finding => finding.RuleId is "floating-pin");
            Assert.Equal(wiring is { Driven: null, Pull: null }, floats);
        }
    }

    [Fact]
    public void There_are_cases_that_depend_on_the_board() =>
        Assert.Contains(
            FirmwareCase.NamesIn(Root).Select(name => FirmwareCase.Load(Path.Combine(Root, name), "floating-pin")),
            firmware => firmware.Marks.Any(mark => mark.Certainty == Certainty.BoardDependent)
        );
}
