using System.Text;
using System.Text.Json;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary><c>check --fix</c>: what is written, what is left, and what is refused.</summary>
public sealed class FixCommandTests
{
    private const string Registers = """
        #define DDRB (*(volatile unsigned char *)0x24)
        #define DDRC (*(volatile unsigned char *)0x27)
        #define DDRD (*(volatile unsigned char *)0x2A)
        #define PRR (*(volatile unsigned char *)0x64)
        #define PRSPI 2

        """;

    private const string Program = """
        #include "registers.h"

        int main(void)
        {
            unsigned char passes = 0;

            DDRB = 0xff;
            DDRC = 0x7f;
            DDRD = 0xff;
            PRR = 0xeb;
            for (;;)
                passes++;
        }

        """;

    private static readonly string[] Fix = ["check", "--device", "atmega328p", "main.c", "--fix"];

    [Fact]
    public void The_example_is_mended_as_the_diff_says()
    {
        using var folder = new TemporaryFolder();
        foreach (var file in Directory.EnumerateFiles(RepositoryRoot.Combine("examples", "hive-scale")))
        {
            File.Copy(file, Path.Combine(folder.Path, Path.GetFileName(file)));
        }

        var before = Content(folder.Path);
        var diff = TestConsole.Run(folder.Path, "check", "-p", ".", "--fix", "--dry-run");
        Assert.Equal(1, diff.Status);
        Assert.Equal(before, Content(folder.Path));
        Assert.Null(
            GoldenFile.Difference(RepositoryRoot.Combine("tests", "reports", "hive-scale-fixes.diff"), diff.Output)
        );

        var applied = TestConsole.Run(folder.Path, "check", "-p", ".", "--fix", "--format", "json");
        Assert.Equal("powerlint: 2 fixes applied in 1 file\n", applied.Error);
        Assert.Equal(Patched(before["main.c"], diff.Output), Content(folder.Path)["main.c"]);

        // What is left is what a run over the mended files finds, and nothing more is safe.
        var left = TestConsole.Run(folder.Path, "check", "-p", ".", "--format", "json");
        Assert.Equal(Rules(left.Output), Rules(applied.Output));
        Assert.DoesNotContain("peripheral-clock-left-on", Rules(left.Output));
        Assert.Equal("", TestConsole.Run(folder.Path, "check", "-p", ".", "--fix", "--dry-run").Output.Trim());
    }

    [Fact]
    public void Line_ends_marks_and_other_bytes_stay()
    {
        using var folder = new TemporaryFolder();
        folder.Write("registers.h", Registers);
        var text = Program
            .Replace("\n", "\r\n", StringComparison.Ordinal)
            .Replace("passes++;", "passes++; /* \u00b5 */", StringComparison.Ordinal);
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. Encoding.Latin1.GetBytes(text)];
        var path = Path.Combine(folder.Path, "main.c");
        File.WriteAllBytes(path, bytes);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        }

        var result = TestConsole.Run(folder.Path, Fix);

        Assert.Equal("powerlint: 1 fix applied in 1 file\n", result.Error);
        var expected = text.Replace(
            "PRR = 0xeb;\r\n",
            "PRR = 0xeb;\r\n    PRR |= (1 << PRSPI);\r\n",
            StringComparison.Ordinal
        );
        Assert.Equal([0xEF, 0xBB, 0xBF, .. Encoding.Latin1.GetBytes(expected)], File.ReadAllBytes(path));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(
                UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead,
                File.GetUnixFileMode(path)
            );
        }

        Assert.Equal(2, Directory.GetFiles(folder.Path).Length);
    }

    [Fact]
    public void A_file_outside_the_firmwares_folder_is_never_written()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(Path.Combine(folder.Path, "product"));
        const string shared = "// powerlint: allow floating-pin (the old board drove it)\n#define SPARE 1\n";
        folder.Write("shared.h", shared);
        folder.Write("product/registers.h", Registers);
        folder.Write("product/powerlint.yaml", "device: atmega328p\n");
        folder.Write("product/main.c", "#include \"../shared.h\"\n" + Program);
        var before = Content(Path.Combine(folder.Path, "product"));
        var result = TestConsole.Run(Path.Combine(folder.Path, "product"), "check", "main.c", "--fix");

        Assert.Equal(2, result.Status);
        Assert.Contains(
            "shared.h: a fix would change this file, which lies outside",
            result.Error,
            StringComparison.Ordinal
        );
        Assert.Equal(shared, File.ReadAllText(Path.Combine(folder.Path, "shared.h")));
        Assert.Equal(before, Content(Path.Combine(folder.Path, "product")));
    }

    [Fact]
    public void A_link_is_not_written_through()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("links need rights there");
        }

        using var elsewhere = new TemporaryFolder();
        using var folder = new TemporaryFolder();
        folder.Write("registers.h", Registers);
        var target = elsewhere.Write("main.c", Program);
        File.CreateSymbolicLink(Path.Combine(folder.Path, "main.c"), target);

        Assert.Equal(2, TestConsole.Run(folder.Path, Fix).Status);
        Assert.Equal(Program, File.ReadAllText(target));
    }

    [Fact]
    public void A_file_that_changes_under_the_check_is_not_written()
    {
        using var folder = new TemporaryFolder();
        folder.Write("registers.h", Registers);
        var path = folder.Write("main.c", Program);
        File.SetLastWriteTimeUtc(path, DateTime.UtcNow.AddMinutes(5));
        var result = TestConsole.Run(folder.Path, Fix);

        Assert.Equal(2, result.Status);
        Assert.Contains("main.c: this file has changed since it was checked", result.Error, StringComparison.Ordinal);
        Assert.Equal(Program, File.ReadAllText(path));
    }

    [Fact]
    public void Pins_get_their_pulls_unseen_only_where_the_board_leaves_them_open()
    {
        using var folder = new TemporaryFolder();
        folder.Write("registers.h", Registers + "#define PORTD (*(volatile unsigned char *)0x2B)\n#define PD3 3\n");
        var source = Program
            .Replace("DDRD = 0xff;", "DDRD = 0xf7;", StringComparison.Ordinal)
            .Replace("0xeb", "0xef", StringComparison.Ordinal);
        folder.Write("main.c", source);
        Assert.Equal("powerlint: 0 fixes applied in 0 files\n", TestConsole.Run(folder.Path, Fix).Error);
        Assert.Equal(source, File.ReadAllText(Path.Combine(folder.Path, "main.c")));

        folder.Write("powerlint.yaml", "board: { pins: { PD3: { connected: no } } }\n");
        Assert.Equal("powerlint: 1 fix applied in 1 file\n", TestConsole.Run(folder.Path, Fix).Error);
        Assert.Contains(
            "    PORTD |= (1 << 3);\n",
            File.ReadAllText(Path.Combine(folder.Path, "main.c")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_dry_run_without_a_fix_is_a_mistake() =>
        Assert.Equal(2, TestConsole.Run(RepositoryRoot.Path, "check", "-p", "examples/hive-scale", "--dry-run").Status);

    private static SortedDictionary<string, string> Content(string folder) =>
        new(
            Directory.EnumerateFiles(folder).ToDictionary(file => Path.GetFileName(file), File.ReadAllText),
            StringComparer.Ordinal
        );

    private static string[] Rules(string json)
    {
        using var document = JsonDocument.Parse(json);
        return
        [
            .. document
                .RootElement.GetProperty("findings")
                .EnumerateArray()
                .Select(finding => finding.GetProperty("rule").GetString()!),
        ];
    }

    // Applies a unified diff of one file with one hunk, as the format's definition has it.
    private static string Patched(string text, string diff)
    {
        var lines = text.Split('\n').ToList();
        var hunk = diff.Split('\n').SkipWhile(line => !line.StartsWith("@@", StringComparison.Ordinal)).ToArray();
        var at = int.Parse(hunk[0].Split('-', ',')[1], System.Globalization.CultureInfo.InvariantCulture) - 1;
        foreach (var line in hunk.Skip(1).Where(line => line.Length > 0))
        {
            switch (line[0])
            {
                case '+':
                    lines.Insert(at++, line[1..]);
                    break;
                case '-':
                    Assert.Equal(lines[at], line[1..]);
                    lines.RemoveAt(at);
                    break;
                default:
                    Assert.Equal(lines[at++], line[1..]);
                    break;
            }
        }

        return string.Join('\n', lines);
    }
}
