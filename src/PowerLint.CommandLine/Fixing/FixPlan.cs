using System.Collections.Immutable;
using PowerLint.Program;
using PowerLint.Rules;

namespace PowerLint.CommandLine;

/// <summary>Which fixes are applied: the safe ones, in the order of their findings, each whole or not at all.</summary>
/// <param name="Applied">Findings whose fixes are applied.</param>
/// <param name="Postponed">Findings whose safe fixes overlap with one that comes first: a second run takes them.</param>
/// <param name="Edits">The edits, by file.</param>
internal sealed record FixPlan(
    ImmutableArray<Finding> Applied,
    ImmutableArray<Finding> Postponed,
    ImmutableSortedDictionary<string, ImmutableArray<SourceEdit>> Edits
)
{
    /// <summary>Chooses among findings.</summary>
    internal static FixPlan Of(IEnumerable<Finding> findings)
    {
        var applied = ImmutableArray.CreateBuilder<Finding>();
        var postponed = ImmutableArray.CreateBuilder<Finding>();
        var edits = new List<SourceEdit>();
        foreach (var finding in findings.Where(finding => finding.Fix is { IsSafe: true }))
        {
            // Two findings may have one mend; it is made once.
            var fresh = finding.Fix!.Edits.Where(edit => !edits.Contains(edit)).ToArray();
            if (fresh.Any(edit => edits.Any(other => Overlap(edit, other))))
            {
                postponed.Add(finding);
                continue;
            }

            applied.Add(finding);
            edits.AddRange(fresh);
        }

        return new FixPlan(
            applied.ToImmutable(),
            postponed.ToImmutable(),
            edits
                .GroupBy(edit => edit.Range.File.Path, StringComparer.Ordinal)
                .ToImmutableSortedDictionary(file => file.Key, file => file.ToImmutableArray(), StringComparer.Ordinal)
        );
    }

    // Insertions side by side, and at the edge of what is replaced, do not touch each other.
    private static bool Overlap(SourceEdit a, SourceEdit b) =>
        string.Equals(a.Range.File.Path, b.Range.File.Path, StringComparison.Ordinal)
        && Before(a.Range.Start, b.Range.End)
        && Before(b.Range.Start, a.Range.End);

    private static bool Before(SourcePosition a, SourcePosition b) =>
        (a.Line, a.Column).CompareTo((b.Line, b.Column)) < 0;
}
