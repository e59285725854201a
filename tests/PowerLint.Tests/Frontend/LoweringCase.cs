using PowerLint.Frontend;
using PowerLint.Program;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>
/// A C file of <c>tests/lowering</c>: flags in its first comment, the expected program text in <c>// expect:</c> comments at
/// its end. <c>POWERLINT_RENEW=1</c> writes what comes out in their place, to be read before it is committed.
/// </summary>
internal sealed class LoweringCase
{
    private const string Mark = "// expect:";

    private readonly string _path;
    private readonly string[] _source;
    private readonly string[] _expected;

    private LoweringCase(string path, string[] lines)
    {
        _path = path;
        _source = [.. lines.TakeWhile(line => !line.StartsWith(Mark, StringComparison.Ordinal))];
        _expected = [.. lines.Skip(_source.Length).Select(line => line[Math.Min(line.Length, Mark.Length + 1)..])];
    }

    public static string Folder => RepositoryRoot.Combine("tests", "lowering");

    public static bool Updates =>
        string.Equals(Environment.GetEnvironmentVariable("POWERLINT_RENEW"), "1", StringComparison.Ordinal);

    public static IEnumerable<string> Names =>
        Directory.EnumerateFiles(Folder, "*.c").Select(Path.GetFileName).Order(StringComparer.Ordinal)!;

    public IReadOnlyList<string> Expected => _expected;

    /// <summary>A tool that the case cannot do without, or null.</summary>
    public string? Needs => Setting("needs");

    public static LoweringCase Load(string name)
    {
        var path = Path.Combine(Folder, name);
        return new LoweringCase(path, File.ReadAllLines(path));
    }

    public ReadResult Read() =>
        FirmwareReader.Read(
            new ReadRequest
            {
                Files = [_path],
                Flags = (Setting("flags") ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries),
                AsksCompilers = Needs is not null,
                WorkingDirectory = Folder,
            },
            TestContext.Current.CancellationToken
        );

    /// <summary>The program text, and the gaps with their lines.</summary>
    public static string[] Text(TranslationUnit unit) =>
        [
            .. ProgramPrinter.Print(unit).Split('\n', StringSplitOptions.RemoveEmptyEntries),
            .. unit.Gaps.Select(gap => $"gap {gap.Range.Line}: {gap.Construct}"),
        ];

    public void Update(IEnumerable<string> text) =>
        File.WriteAllLines(_path, [.. _source, .. text.Select(line => $"{Mark} {line}")]);

    private string? Setting(string name)
    {
        var prefix = $"// {name}:";
        return _source
            .FirstOrDefault(line => line.StartsWith(prefix, StringComparison.Ordinal))
            ?[prefix.Length..].Trim();
    }
}
