using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>Runs the rules over what the analysis found out.</summary>
public static class RuleRunner
{
    // Rules of this group judge the suppressions themselves, so they run last and cannot be suppressed.
    private const string SuppressionGroup = "suppressions";

    /// <summary>Runs all rules that are switched on.</summary>
    /// <param name="result">The analysis' result.</param>
    /// <param name="board">What the board file says.</param>
    /// <param name="settings">Levels and thresholds.</param>
    /// <param name="image">The image: its comments may suppress findings, and fixes are written into its source.</param>
    /// <returns>The same for the same input, byte for byte.</returns>
    public static RuleRun Run(AnalysisResult result, BoardFacts board, RuleSettings settings, Image image)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(image);
        var sources = new SourceTexts();
        var locals = new LocalNames(image);
        var paths = new PathOrder(result.FirstStatement.File.Path);
        var contexts = Check(isSuppressionGroup: false, null);
        var outcome = SuppressionOutcome.Apply(
            SuppressionComment.Read(image.Units.SelectMany(unit => unit.Comments), sources, paths),
            Fingerprint.Mark(Sorted(contexts.SelectMany(context => context.Findings)), sources, locals)
        );
        var fixes = new FixWriter(image, result, sources);
        var judged = Check(isSuppressionGroup: true, outcome);
        return new RuleRun(
            [
                .. Sorted(
                        outcome.Kept.Concat(
                            Fingerprint.Mark(Sorted(judged.SelectMany(context => context.Findings)), sources, locals)
                        )
                    )
                    .Select(finding => finding with { Fix = FixOf(finding) }),
            ],
            outcome.Suppressed,
            [.. contexts.SelectMany(context => context.Verdicts).Distinct()]
        )
        {
            Sources = sources,
        };

        List<RuleContext> Check(bool isSuppressionGroup, SuppressionOutcome? suppressions)
        {
            var ran = new List<RuleContext>();
            foreach (var rule in RuleCatalog.All.Where(rule => settings.IsOn(rule.Id)))
            {
                if (string.Equals(rule.Group, SuppressionGroup, StringComparison.Ordinal) == isSuppressionGroup)
                {
                    var context = new RuleContext(result, board, rule, settings) { Suppressions = suppressions };
                    rule.Create().Check(context);
                    ran.Add(context);
                }
            }

            return ran;
        }

        Fix? FixOf(Finding finding) =>
            finding.Mend is { } mend ? fixes.Write(mend)
            : finding.UselessComment is { } comment ? fixes.Without(comment, "Remove the suppression")
            : null;

        IEnumerable<Finding> Sorted(IEnumerable<Finding> findings) =>
            findings
                .OrderBy(finding => finding.Range.File.Path, paths)
                .ThenBy(finding => finding.Range.Start.Line)
                .ThenBy(finding => finding.Range.Start.Column)
                .ThenBy(finding => finding.RuleId, StringComparer.Ordinal)
                .ThenBy(finding => string.Join(',', finding.Subjects), SubjectOrder.Instance)
                .ThenBy(finding => finding.Certainty)
                .ThenBy(finding => finding.Message, StringComparer.Ordinal);
    }
}
