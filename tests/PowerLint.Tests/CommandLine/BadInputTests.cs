using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>
/// Every folder in <c>tests/bad-input</c> is a case: <c>arguments.txt</c> is the command line, one argument a line;
/// <c>expected.txt</c> says the exit status and what the user is told. The statuses are those of the product's README.
/// </summary>
public sealed class BadInputTests
{
    private static readonly string Root = RepositoryRoot.Combine("tests", "bad-input");

    public static TheoryData<string> Cases =>
        [
            .. Directory
                .EnumerateDirectories(Root)
                .Select(folder => Path.GetFileName(folder))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Bad_input_gets_a_clear_message(string name)
    {
        var folder = Path.Combine(Root, name);
        var arguments = File.ReadAllLines(Path.Combine(folder, "arguments.txt"));
        var result = TestConsole.Run(folder, arguments);

        Assert.NotEqual(0, result.Status);
        var text = $"exit status {result.Status}\n--- error\n{result.Error}--- output\n{result.Output}";
        var difference = GoldenFile.Difference(
            Path.Combine(folder, "expected.txt"),
            text.Replace(folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal)
                .Replace(folder, ".", StringComparison.Ordinal)
        );
        Assert.True(difference is null, difference);
    }
}
