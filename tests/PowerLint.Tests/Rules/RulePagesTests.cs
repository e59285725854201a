using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>Rule pages have one shape, and what they show is run.</summary>
public sealed class RulePagesTests
{
    public static TheoryData<string> Rules => [.. RuleCatalog.All.Select(rule => rule.Id)];

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_page_has_the_fixed_headings(string id)
    {
        var rule = RuleCatalog.Find(id)!;

        Assert.Equal([.. RulePageExamples.Headings], RulePageExamples.HeadingsOf(rule).ToArray());
        Assert.StartsWith($"# {id}\n", rule.Page, StringComparison.Ordinal);
        Assert.All(
            RulePageExamples.Headings,
            heading => Assert.True(RulePageExamples.SectionOf(rule, heading).Trim().Length > 0, heading + " is empty")
        );
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void The_example_fires_as_its_comments_say(string id)
    {
        var firmware = Run(id, "Example", out var differences);

        Assert.Contains(firmware.Marks, mark => mark.Kind == MarkKind.Finding);
        Assert.True(differences.Length == 0, differences);
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void The_mended_example_is_clean(string id)
    {
        var firmware = Run(id, "Mended", out var differences);

        Assert.DoesNotContain(firmware.Marks, mark => mark.Kind == MarkKind.Finding);
        Assert.True(differences.Length == 0, differences);
    }

    private static FirmwareCase Run(string id, string heading, out string differences)
    {
        var rule = RuleCatalog.Find(id)!;
        var folder = Directory.CreateTempSubdirectory("powerlint-page-");
        try
        {
            Assert.Single(RulePageExamples.BlocksOf(rule, heading));
            var firmware = RulePageExamples.Write(rule, heading, 0, folder.FullName);
            differences = string.Join('\n', CaseRun.Of(firmware).Differences(firmware));
            return firmware;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
