using PowerLint.Reports;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>Findings as text.</summary>
public sealed class FindingTextTests
{
    [Fact]
    public void Plain_text_says_everything()
    {
        var difference = GoldenFile.Difference(BenchLamp.Golden("findings.txt"), Write(isTerminal: false));
        Assert.True(difference is null, difference);
    }

    [Fact]
    public void Colour_goes_to_terminals_only()
    {
        const char escape = '\u001b';
        Assert.DoesNotContain(escape, Write(isTerminal: false));
        var coloured = Write(isTerminal: true);
        Assert.Contains(escape, coloured);
        var words = System.Text.RegularExpressions.Regex.Replace(
            coloured,
            "\u001b\\[[0-9;]*m",
            "",
            System.Text.RegularExpressions.RegexOptions.None,
            TimeSpan.FromSeconds(5)
        );
        Assert.Equal(Write(isTerminal: false), words);
    }

    [Theory]
    [InlineData(0, "0 µA")]
    [InlineData(0.0123, "12.3 nA")]
    [InlineData(0.1, "0.1 µA")]
    [InlineData(4.25, "4.25 µA")]
    [InlineData(999, "999 µA")]
    [InlineData(4200, "4.2 mA")]
    public void Currents_have_a_fitting_unit(double microamps, string text) =>
        Assert.Equal(text, CurrentText.Show(microamps));

    private static string Write(bool isTerminal)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        new FindingTextWriter(BenchLamp.Report(BenchLamp.Analyze()), TextConsole.Over(writer, isTerminal)).Write();
        return writer.ToString();
    }
}
