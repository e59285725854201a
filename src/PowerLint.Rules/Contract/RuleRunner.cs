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
    /// <param name="comments">The comments of all units of the image that mention the product (<see cref="TranslationUnit.Comments"/>).</param>
    /// <returns>The same for the same input, byte for byte.</returns>
    public static RuleRun Run(
        AnalysisResult result,
        BoardFacts board,
        RuleSettings settings,
        IEnumerable<Comment> comments
    )
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(comments);
        var sources = new SourceTexts();
        var paths = new PathOrder(result.FirstStatement.File.Path);
        var contexts = Check(isSuppressionGroup: false, null);
        var outcome = SuppressionOutcome.Apply(
            SuppressionComment.Read(comments, sources, paths),
            Fingerprint.Mark(Sorted(contexts.SelectMany(context => context.Findings)), sources)
        );
        var judged = Check(isSuppressionGroup: true, outcome);
        return new RuleRun(
            [
                .. Sorted(
                    outcome.Kept.Concat(
                        Fingerprint.Mark(Sorted(judged.SelectMany(context => context.Findings)), sources)
                    )
                ),
            ],
            outcome.Suppressed,
            [.. contexts.SelectMany(context => context.Verdicts).Distinct()]
        );

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
