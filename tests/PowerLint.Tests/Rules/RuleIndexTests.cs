using System.Text;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>
/// <c>rules/README.md</c> lists the pages. <c>POWERLINT_RENEW=1 dotnet test --project tests/PowerLint.Tests</c> writes it anew.
/// </summary>
public sealed class RuleIndexTests
{
    [Fact]
    public void The_index_lists_every_page()
    {
        var file = RepositoryRoot.Combine("rules", "README.md");
        var index = Index();
        if (string.Equals(Environment.GetEnvironmentVariable("POWERLINT_RENEW"), "1", StringComparison.Ordinal))
        {
            File.WriteAllText(file, index);
        }

        Assert.True(File.Exists(file), "rules/README.md is missing: run the tests with POWERLINT_RENEW=1");
        Assert.Equal(index, File.ReadAllText(file).ReplaceLineEndings("\n"));
    }

    private static string Index()
    {
        var text = new StringBuilder(
            """
            # Rules

            <!-- Written from the pages' front matter by RuleIndexTests (POWERLINT_RENEW=1). Do not edit by hand. -->

            The level is that of a proven finding; board-dependent and possible findings are notes. Each page shows a bad and a mended
            example for every device style that the rule concerns; `powerlint explain RULE --device PART` prints it with those of one.

            """
        );
        foreach (var group in RuleCatalog.All.GroupBy(rule => rule.Group, StringComparer.Ordinal))
        {
            text.Append("\n## ").Append(char.ToUpperInvariant(group.Key[0])).Append(group.Key.AsSpan(1)).Append("\n\n");
            text.Append("| Rule | Level | What it finds |\n| --- | --- | --- |\n");
            foreach (var rule in group)
            {
                var level = rule.DefaultLevel switch
                {
                    Level.Error => "error",
                    Level.Warning => "warning",
                    _ => "note",
                };
                text.Append("| [`")
                    .Append(rule.Id)
                    .Append("`](")
                    .Append(rule.Id)
                    .Append(".md) | ")
                    .Append(level)
                    .Append(" | ")
                    .Append(rule.Summary)
                    .Append(" |\n");
            }
        }

        return text.ToString().ReplaceLineEndings("\n");
    }
}
