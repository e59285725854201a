using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>Every C file and folder below <c>tests/rules/RULE/</c> is a test.</summary>
public sealed class RuleCasesTests
{
    // Cases about several rules at once: all findings are compared.
    private const string Mixed = "mixed";

    private static readonly string Root = RepositoryRoot.Combine("tests", "rules");

    public static TheoryData<string, string> Cases
    {
        get
        {
            var cases = new TheoryData<string, string>();
            foreach (var folder in Directory.EnumerateDirectories(Root).Order(StringComparer.Ordinal))
            {
                foreach (var name in FirmwareCase.NamesIn(folder))
                {
                    cases.Add(Path.GetFileName(folder), name);
                }
            }

            return cases;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Findings_are_those_that_the_source_expects(string rule, string name)
    {
        var firmware = FirmwareCase.Load(
            Path.Combine(Root, rule, name),
            string.Equals(rule, Mixed, StringComparison.Ordinal) ? null : rule
        );

        var differences = CaseRun.Of(firmware).Differences(firmware);

        Assert.True(differences.IsEmpty, string.Join('\n', differences));
    }

    [Fact]
    public void Every_rule_has_a_folder_and_every_folder_a_rule()
    {
        var folders = Directory
            .EnumerateDirectories(Root)
            .Select(folder => Path.GetFileName(folder))
            .Where(name => !string.Equals(name, Mixed, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);

        Assert.Equal(
            RuleCatalog.All.Select(rule => rule.Id).Order(StringComparer.Ordinal).ToArray(),
            folders.ToArray()
        );
    }

    [Fact]
    public void Every_rule_has_cases_that_fire_and_cases_that_do_not()
    {
        foreach (var rule in RuleCatalog.All)
        {
            var folder = Path.Combine(Root, rule.Id);
            var cases = FirmwareCase
                .NamesIn(folder)
                .Select(name => FirmwareCase.Load(Path.Combine(folder, name), rule.Id));
            var fires = cases.ToLookup(firmware =>
                firmware.Marks.Any(mark =>
                    mark.Kind == MarkKind.Finding && string.Equals(mark.Name, rule.Id, StringComparison.Ordinal)
                )
            );

            Assert.True(fires[true].Any() && fires[false].Any(), $"{rule.Id} lacks firing or silent cases");
        }
    }

    [Fact]
    public void No_file_is_left_over()
    {
        var known = new HashSet<string>([".c", ".h"], StringComparer.Ordinal);
        var strangers = Directory
            .EnumerateFiles(Root, "*", SearchOption.AllDirectories)
            .Where(file =>
                !known.Contains(Path.GetExtension(file))
                || string.Equals(Path.GetDirectoryName(file), Root, StringComparison.Ordinal)
            );

        Assert.Empty(strangers);
    }
}
