using System.Collections.Immutable;
using PowerLint.Rules;

namespace PowerLint.CommandLine;

/// <summary>What the configuration changes about rules below a path.</summary>
/// <param name="Pattern">The path's pattern, below the configuration's folder.</param>
/// <param name="Levels">Levels by rule; null switches the rule off there.</param>
internal sealed record PathRule(string Pattern, ImmutableDictionary<string, Level?> Levels);

/// <summary>Applies settings that hold below a path only; where several patterns match, the last one counts.</summary>
internal sealed class PathRules(string folder, ImmutableArray<PathRule> rules)
{
    private readonly ImmutableArray<(PathPatterns Paths, PathRule Rule)> _rules =
    [
        .. rules.Select(rule => (new PathPatterns(folder, [rule.Pattern]), rule)),
    ];

    /// <summary>The finding as it is to be reported, or null where its rule is off at its place.</summary>
    internal Finding? Apply(Finding finding)
    {
        foreach (var (paths, rule) in _rules.Reverse())
        {
            if (rule.Levels.TryGetValue(finding.RuleId, out var level) && paths.Match(finding.Range.File.Path))
            {
                // As with a rule's own level: what the rule lowered to a note stays one.
                return level is not { } chosen ? null
                    : finding.Level == Level.Note ? finding
                    : finding with { Level = chosen };
            }
        }

        return finding;
    }
}
