using System.Text.RegularExpressions;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.OracleTests;

/// <summary>
/// The fingerprints of every case in <c>tests/rules</c> survive edits that do not touch what is found, and change with the
/// statement that is to blame.
/// </summary>
public sealed partial class FingerprintEditTests
{
    private const int MostCauses = 2;

    private static readonly string Root = RepositoryRoot.Combine("tests", "rules");

    public static TheoryData<string> Cases =>
        [
            .. Directory
                .EnumerateDirectories(Root)
                .Order(StringComparer.Ordinal)
                .SelectMany(folder => FirmwareCase.NamesIn(folder).Select(name => $"{Path.GetFileName(folder)}/{name}"))
                .Where(name => name.EndsWith(".c", StringComparison.Ordinal)),
        ];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Edits_elsewhere_change_no_fingerprint(string name)
    {
        var original = FirmwareCase.Load(Path.Combine(Root, name), ruleId: null);
        var text = File.ReadAllText(original.Files[0]);
        var before = Prints(CaseRun.Of(original).Rules);
        if (Differences(SourceEdits.ApplyAll(text)).Length == 0)
        {
            return;
        }

        // Which of them it was.
        Assert.Fail(
            string.Join(
                '\n',
                SourceEdits.All.SelectMany(edit => Differences(edit.Value(text)).Select(d => $"{edit.Key}: {d}"))
            )
        );

        string[] Differences(string edited)
        {
            using var copy = new EditedCase(original, edited);
            var after = Prints(CaseRun.Of(copy.Firmware).Rules);
            return
            [
                .. before.Except(after, StringComparer.Ordinal).Select(print => $"lost {print}"),
                .. after.Except(before, StringComparer.Ordinal).Select(print => $"new {print}"),
            ];
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Another_cause_is_another_fingerprint(string name)
    {
        var original = FirmwareCase.Load(Path.Combine(Root, name), ruleId: null);
        var text = File.ReadAllText(original.Files[0]);
        var run = CaseRun.Of(original).Rules;
        var causes = run
            .Findings.Where(finding => finding.Range.Line > 0 && finding.Range.Line == finding.Range.End.Line)
            .Where(finding => Assignment().IsMatch(run.Sources.Text(finding.Range)))
            .GroupBy(finding => finding.Range)
            .Take(MostCauses);
        foreach (var cause in causes)
        {
            // The same value, written in another way: whoever touches the statement is to look at the finding again.
            var statement = run.Sources.Text(cause.Key);
            var edit = new SourceEdit(cause.Key, statement.Replace(" = ", " = 0 + ", StringComparison.Ordinal));
            using var copy = new EditedCase(original, EditedText.Apply(text, [edit])!);
            var after = CaseRun.Of(copy.Firmware).Rules.Findings.Select(finding => finding.Fingerprint).ToHashSet();
            Assert.DoesNotContain(cause.Where(IsBlamed), finding => after.Contains(finding.Fingerprint));
        }

        // What reset leaves as it is only points at the start of the program.
        bool IsBlamed(Finding finding) => !finding.Flow.IsEmpty && finding.Flow.Any(d => d.Range == finding.Range);
    }

    [GeneratedRegex(@"^[\w.>\[\]-]+ = [^={]+$", RegexOptions.None, 1000)]
    private static partial Regex Assignment();

    private static string[] Prints(RuleRun run) =>
        [
            .. run
                .Findings.Concat(run.Suppressed.Select(suppressed => suppressed.Finding))
                .Select(finding => $"{finding.RuleId} {string.Join(' ', finding.Subjects)} {finding.Fingerprint}")
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>A case with another text, under its own name.</summary>
    private sealed class EditedCase : IDisposable
    {
        private readonly string _root = Directory.CreateTempSubdirectory("powerlint-edit-").FullName;

        public EditedCase(FirmwareCase original, string text)
        {
            FixedCopy.BringSharedHeaders(_root);
            var folder = Directory.CreateDirectory(Path.Combine(_root, "rules", "case")).FullName;
            var path = Path.Combine(folder, Path.GetFileName(original.Files[0]));
            File.WriteAllText(path, text);
            Firmware = FirmwareCase.Load(path, ruleId: null);
        }

        public FirmwareCase Firmware { get; }

        public void Dispose() => Directory.Delete(_root, recursive: true);
    }
}
