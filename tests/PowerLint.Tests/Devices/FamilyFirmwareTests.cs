using System.Text.Json;
using PowerLint.CommandLine;
using PowerLint.Devices;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.Tests.Devices;

/// <summary>
/// Every family has worked firmware below <c>tests/families/FAMILY/</c>, which goes the whole way of the command line: what is clean
/// comes out without a finding of any level and without a notice, what is planted with its five mistakes and nothing else.
/// </summary>
public sealed class FamilyFirmwareTests
{
    // Families that still lack worked firmware. The list only shrinks.
    private static readonly string[] Missing = [];

    private static readonly DeviceCatalog Catalog = DeviceCatalog.Open(RepositoryRoot.Combine("devices"));

    public static TheoryData<string, string> Scenarios
    {
        get
        {
            var scenarios = new TheoryData<string, string>();
            foreach (var firmware in FamilyFirmware.All())
            {
                scenarios.Add(firmware.Family, firmware.Scenario);
            }

            return scenarios;
        }
    }

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void Findings_are_the_planted_ones(string family, string scenario)
    {
        var firmware = new FamilyFirmware(family, scenario).Load();
        var device = Catalog.Load(firmware.Header.Device);
        var console = new TestConsole(Path.GetDirectoryName(firmware.Files[0])!);
        var cancellation = TestContext.Current.CancellationToken;
        var session = new CommandSession(console, firmware.Header.CommandLine(device), cancellation);

        var run = FirmwareRun.Start(
            new FirmwareRequest(null, null, null, firmware.Files, session.CompilerFlags, []),
            session
        );
        var report = run.Check(cancellation);

        Assert.Equal((family, firmware.Header.Device), (run.Device?.Family, run.Device?.Name));
        Assert.Equal("", string.Join('\n', report.Notices.Select(notice => $"{notice.Range}: {notice.Message}")));
        Assert.Equal("", string.Join('\n', report.Allowed.Select(allowed => $"{allowed.Finding.Range}: allowed")));
        var rules = new RuleRun(report.Findings, [], []);
        var differences = new CaseRun(run.Analyze(cancellation)!, rules).Differences(firmware);
        Assert.True(differences.IsEmpty, string.Join('\n', differences));
    }

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void A_compile_database_says_the_same(string family, string scenario)
    {
        var firmware = new FamilyFirmware(family, scenario).Load();
        var device = Catalog.Load(firmware.Header.Device);
        var folder = Path.GetDirectoryName(firmware.Files[0])!;
        using var build = new TemporaryFolder();
        build.Write(
            "compile_commands.json",
            JsonSerializer.Serialize(
                firmware.Files.Select(file => new
                {
                    directory = folder,
                    arguments = firmware.Header.CommandLine(device).AddRange("-c", file),
                    file,
                })
            )
        );
        var settings = Path.Combine(folder, SettingsFile.Name);
        string[] options = File.Exists(settings) ? ["--config", settings] : [];

        var named = TestConsole.Run(
            folder,
            ["check", "--format", "json", .. options, .. firmware.Files, "--", .. firmware.Header.CommandLine(device)]
        );
        var listed = TestConsole.Run(folder, ["check", "--format", "json", .. options, "-p", build.Path]);
        var state = TestConsole.Run(folder, ["state", .. options, "-p", build.Path]);

        Assert.Equal("", named.Error);
        Assert.Equal(named, listed);
        Assert.Equal((0, ""), (state.Status, state.Error));
    }

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void Planted_firmware_has_five_mistakes_of_different_rules_and_clean_firmware_none(
        string family,
        string scenario
    )
    {
        var firmware = new FamilyFirmware(family, scenario);
        var rules = firmware
            .Load()
            .Marks.Where(mark => mark.Kind is not (MarkKind.State or MarkKind.Clean or MarkKind.Related))
            .Select(mark => mark.Name)
            .ToArray();

        Assert.Equal(firmware.IsPlanted ? FamilyFirmware.PlantedMistakes : 0, rules.Length);
        Assert.Equal(rules.Distinct(StringComparer.Ordinal), rules);
    }

    [Fact]
    public void Every_family_has_clean_and_planted_firmware()
    {
        var whole = FamilyFirmware
            .All()
            .GroupBy(firmware => firmware.Family, StringComparer.Ordinal)
            .Where(family => family.Any(f => f.IsPlanted) && family.Any(f => !f.IsPlanted))
            .Select(family => family.Key);
        var families = Catalog.Families.Select(family => family.Family).ToArray();

        Assert.Empty(FamilyFirmware.Families().Except(families, StringComparer.Ordinal));
        Assert.Equal(families.Order(StringComparer.Ordinal), whole.Concat(Missing).Order(StringComparer.Ordinal));
    }
}
