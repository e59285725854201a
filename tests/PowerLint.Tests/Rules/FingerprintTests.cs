using PowerLint.Program;
using PowerLint.Rules;

namespace PowerLint.Tests;

/// <summary>Fingerprints stay through edits that do not touch what is found.</summary>
public sealed class FingerprintTests
{
    private const string Statement = "PORTD = 0x0f;";

    [Theory]
    [InlineData("PORTD  =\t0x0f", "PORTD=0x0f")]
    [InlineData("a /* why */ b", "a b")]
    [InlineData("x = 1; // set\ny", "x=1;y")]
    [InlineData("return  value", "return value")]
    [InlineData("/* never closed", "")]
    public void White_space_and_comments_do_not_count(string text, string expected) =>
        Assert.Equal(expected, Fingerprint.Normalize(text));

    [Fact]
    public void Lines_above_and_the_folder_do_not_count()
    {
        var before = Mark("int main(void) {\n  " + Statement + "\n}\n", line: 2, column: 3, ["PD1"]);
        var after = Mark("// new\n\nint main(void) {\n      " + Statement + "\n}\n", line: 4, column: 7, ["PD1"]);

        Assert.Equal(before, after);
        Assert.Equal(Fingerprint.Length, Assert.Single(before).Length);
    }

    [Fact]
    public void Subjects_and_repeated_statements_tell_findings_apart()
    {
        var text = Statement + "\n";

        var one = Mark(text, 1, 1, ["PD1"]);
        var other = Mark(text, 1, 1, ["PD2"]);
        var twice = Mark(text, 1, 1, ["PD1"], count: 2);

        Assert.NotEqual(one, other);
        Assert.Equal(2, twice.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(one[0], twice[0]);
    }

    private static string[] Mark(string text, int line, int column, string[] subjects, int count = 1)
    {
        var folder = Directory.CreateTempSubdirectory("powerlint-fingerprint-");
        try
        {
            var path = Path.Combine(folder.FullName, "main.c");
            File.WriteAllText(path, text);
            var file = new SourceFile(path, IsSystem: false);
            var start = new SourcePosition(file, line, column);
            var finding = new Finding
            {
                RuleId = "floating-pin",
                Level = Level.Note,
                Certainty = Certainty.Possible,
                Subjects = [.. subjects],
                Message = "",
                Function = "main",
                Range = new SourceRange(start, start with { Column = column + Statement.Length }),
            };
            return
            [
                .. Fingerprint.Mark(Enumerable.Repeat(finding, count), new SourceTexts()).Select(f => f.Fingerprint),
            ];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
