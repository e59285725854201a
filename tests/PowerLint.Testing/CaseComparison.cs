using System.Collections.Immutable;
using System.Globalization;
using PowerLint.Analysis;
using PowerLint.Program;
using PowerLint.Rules;

namespace PowerLint.Testing;

/// <summary>Holds a run against the marks of its case, both ways: an unmatched mark and an unmatched finding differ.</summary>
internal sealed class CaseComparison(FirmwareCase firmware, AnalysisResult result, RuleRun rules)
{
    private readonly List<string> _differences = [];

    public ImmutableArray<string> Differences()
    {
        CompareFindings();
        foreach (var mark in Marks(MarkKind.Related))
        {
            var found = rules
                .Findings.Where(finding => IsRule(finding, mark))
                .SelectMany(finding => finding.Related)
                .Any(related => IsAt(related.Range, mark) && mark.Words.All(words => Has(related.Message, words)));
            Expect(found, mark, "no finding of the rule names this line as related");
        }

        foreach (var mark in Marks(MarkKind.Clean))
        {
            foreach (var subject in mark.Subjects)
            {
                Expect(
                    rules.Verdicts.Contains(new Verdict(mark.Name, subject)),
                    mark,
                    $"the rule does not say that {subject} is clean"
                );
            }
        }

        foreach (var mark in Marks(MarkKind.State))
        {
            CompareState(mark);
        }

        return [.. _differences];
    }

    private void CompareFindings()
    {
        var open = rules
            .Findings.Where(finding =>
                firmware.ComparedRules is not { } compared || compared.Contains(finding.RuleId, StringComparer.Ordinal)
            )
            .ToList();
        foreach (var mark in Marks(MarkKind.Finding))
        {
            Expect(Take(open, mark), mark, "expected, not found");
        }

        foreach (var mark in Marks(MarkKind.FindingUnwanted))
        {
            Expect(Take(open, mark), mark, "the false alarm is gone: remove the mark");
        }

        foreach (var mark in Marks(MarkKind.FindingWanted))
        {
            Expect(!Take(open, mark), mark, "the miss is mended: turn the mark into 'finding:'");
        }

        _differences.AddRange(open.Select(finding => $"{finding.Range}: not expected: {Describe(finding)}"));
    }

    private static bool Take(List<Finding> open, ExpectationMark mark)
    {
        var index = open.FindIndex(finding =>
            IsRule(finding, mark)
            && IsAt(finding.Range, mark)
            && (mark.Subjects.IsEmpty || mark.Subjects.ToHashSet(StringComparer.Ordinal).SetEquals(finding.Subjects))
            && (mark.Certainty is null || mark.Certainty == finding.Certainty)
            && (mark.Level is null || mark.Level == finding.Level)
            && mark.Words.All(words => Has(finding.Message, words))
        );
        if (index >= 0)
        {
            open.RemoveAt(index);
        }

        return index >= 0;
    }

    private void CompareState(ExpectationMark mark)
    {
        var register = result.Device.Registers.FirstOrDefault(r =>
            string.Equals(r.Name, mark.Name, StringComparison.Ordinal)
        );
        var points = result.RestingPoints.Where(point => IsAt(point.Range, mark)).ToArray();
        if (register is null || points.Length == 0)
        {
            Expect(false, mark, register is null ? "the device has no such register" : "no resting point on this line");
            return;
        }

        foreach (var point in points)
        {
            var bits = point.State.Read(register);
            var actual = string.Create(
                CultureInfo.InvariantCulture,
                $"{string.Concat(Enumerable.Range(0, register.WidthBits).Reverse().Select(bit => (bits.Known >> bit & 1) == 0 ? '?' : (bits.Value >> bit & 1) == 0 ? '0' : '1'))}"
            );
            var fits =
                actual.Length == mark.Bits.Length
                && actual.Zip(mark.Bits).All(pair => pair.Second == '-' || pair.First == pair.Second);
            Expect(fits, mark, $"{register.Name} is 0b{actual}");
        }
    }

    private IEnumerable<ExpectationMark> Marks(MarkKind kind) => firmware.Marks.Where(mark => mark.Kind == kind);

    private void Expect(bool holds, ExpectationMark mark, string otherwise)
    {
        if (!holds)
        {
            _differences.Add($"{mark.File}:{mark.Line}: {otherwise}: {mark.Text}");
        }
    }

    private static bool IsRule(Finding finding, ExpectationMark mark) =>
        string.Equals(finding.RuleId, mark.Name, StringComparison.Ordinal);

    private static bool IsAt(SourceRange range, ExpectationMark mark) =>
        range.Line == mark.Line && string.Equals(range.File.Path, mark.File, StringComparison.Ordinal);

    private static bool Has(string text, string words) => text.Contains(words, StringComparison.Ordinal);

    // In the form of a mark, ready to be copied once it has been judged.
    private static string Describe(Finding finding)
    {
        var certainty = finding.Certainty switch
        {
            Certainty.Proven => "proven",
            Certainty.BoardDependent => "board-dependent",
            _ => "possible",
        };
        var level = finding.Level switch
        {
            Level.Error => "error",
            Level.Warning => "warning",
            _ => "note",
        };
        return $"{finding.RuleId} {string.Join(' ', finding.Subjects)} {certainty} {level}\n    {finding.Message}";
    }
}
