using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>What the README shows is true.</summary>
public sealed class ReadmeTests
{
    private static readonly string[] Blocks = ReadBlocks();

    [Fact]
    public void The_first_block_is_the_main_job() =>
        Assert.Equal(
            "dotnet run --project src/PowerLint.CommandLine -c Release -- check -p examples/hive-scale\n",
            Blocks[0]
        );

    [Fact]
    public void The_second_block_runs_the_tests() => Assert.Equal("bash .ci/test\n", Blocks[1]);

    [Fact]
    public void The_configuration_shown_is_accepted()
    {
        var shown = Blocks.Single(block => block.StartsWith("device:", StringComparison.Ordinal));
        using var folder = new TemporaryFolder();
        folder.Write("powerlint.yaml", shown);
        folder.Write("main.c", "int main(void)\n{\n    for (;;)\n        ;\n}\n");
        var result = TestConsole.Run(folder.Path, "check", "--fail-on", "none", "main.c");

        Assert.Equal("", result.Error);
        Assert.Equal(0, result.Status);
    }

    [Fact]
    public void Every_command_is_named()
    {
        var readme = File.ReadAllText(RepositoryRoot.Combine("README.md"));
        var help = TestConsole.Run(RepositoryRoot.Path, "--help");
        Assert.Equal(0, help.Status);
        foreach (var command in (string[])["check", "state", "rules", "explain", "devices"])
        {
            Assert.Contains($"| `{command}", readme, StringComparison.Ordinal);
            Assert.Contains($"  {command} ", help.Output, StringComparison.Ordinal);
        }
    }

    private static string[] ReadBlocks()
    {
        var blocks = new List<string>();
        string? open = null;
        foreach (var line in File.ReadLines(RepositoryRoot.Combine("README.md")))
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                if (open is not null)
                {
                    blocks.Add(open);
                }

                open = open is null ? "" : null;
            }
            else if (open is not null)
            {
                open += line + "\n";
            }
        }

        return [.. blocks];
    }
}
