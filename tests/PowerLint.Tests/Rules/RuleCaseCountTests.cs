using PowerLint.Devices;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>
/// How many programs of <c>tests/rules</c> a rule fires in and how many it stays silent in, over how many device families. Parts
/// that exist only for tests do not count, and neither do marks of known misses and false alarms.
/// </summary>
public sealed class RuleCaseCountTests(ITestOutputHelper output)
{
    private const int LeastPrograms = 6;

    private const int LeastFamilies = 3;

    // Families alike in all but their pins are no great help: some of them must differ in the processor.
    private const int LeastCores = 2;

    private static readonly string Root = RepositoryRoot.Combine("tests", "rules");

    private static readonly Lazy<Program[]> Programs = new(() => [.. Load()]);

    public static TheoryData<string> Rules => [.. RuleCatalog.All.Select(rule => rule.Id)];

    [Theory]
    [MemberData(nameof(Rules))]
    public void Enough_programs_of_enough_families_fire(string rule) =>
        AssertEnough(rule, Programs.Value.Where(program => program.Fires.Contains(rule)));

    [Theory]
    [MemberData(nameof(Rules))]
    public void Enough_programs_of_enough_families_are_silent(string rule) =>
        AssertEnough(
            rule,
            Programs.Value.Where(program =>
                !program.Fires.Contains(rule)
                && !program.IsWrongOn.Contains(rule)
                && (program.Cleans.Contains(rule) || program.Folder.Equals(rule, StringComparison.Ordinal))
            )
        );

    private void AssertEnough(string rule, IEnumerable<Program> chosen)
    {
        var programs = chosen.ToArray();
        var families = programs.CountBy(program => program.Family).OrderBy(family => family.Key).ToArray();
        output.WriteLine($"{programs.Length}: {string.Join(", ", families.Select(f => $"{f.Value} {f.Key}"))}");

        Assert.True(programs.Length >= LeastPrograms, $"{rule}: {programs.Length} programs");

        // What a comment says is the same on every part.
        if (RuleCatalog.Find(rule)!.Group != "suppressions")
        {
            Assert.True(families.Length >= LeastFamilies, $"{rule}: {families.Length} families");
            Assert.True(
                programs.DistinctBy(program => program.Core).Count() >= LeastCores,
                $"{rule}: one kind of processor"
            );
        }
    }

    private static IEnumerable<Program> Load()
    {
        var catalog = DeviceCatalog.Open(RepositoryRoot.Combine("devices"));
        var devices = catalog.Names.ToHashSet(StringComparer.Ordinal);
        var models = new Dictionary<string, DeviceModel>(StringComparer.Ordinal);
        foreach (var folder in Directory.EnumerateDirectories(Root).Order(StringComparer.Ordinal))
        {
            foreach (var name in FirmwareCase.NamesIn(folder))
            {
                var firmware = FirmwareCase.Load(Path.Combine(folder, name), ruleId: null);
                var device = firmware.Header.Device;
                if (!devices.Contains(device))
                {
                    continue;
                }

                if (!models.TryGetValue(device, out var model))
                {
                    models[device] = model = catalog.Load(device);
                }

                yield return new Program(
                    Path.GetFileName(folder),
                    model.Family,
                    model.Core,
                    RulesOf(firmware, MarkKind.Finding),
                    RulesOf(firmware, MarkKind.Clean),
                    RulesOf(firmware, MarkKind.FindingWanted, MarkKind.FindingUnwanted)
                );
            }
        }
    }

    private static HashSet<string> RulesOf(FirmwareCase firmware, params MarkKind[] kinds) =>
        firmware
            .Marks.Where(mark => kinds.Contains(mark.Kind))
            .Select(mark => mark.Name)
            .ToHashSet(StringComparer.Ordinal);

    private sealed record Program(
        string Folder,
        string Family,
        string Core,
        HashSet<string> Fires,
        HashSet<string> Cleans,
        HashSet<string> IsWrongOn
    );
}
