using System.Collections.Immutable;
using PowerLint.Rules;

namespace PowerLint.CommandLine;

/// <summary>A threshold that the configuration can set.</summary>
/// <param name="RuleId">The rule that it belongs to.</param>
/// <param name="Name">Its key.</param>
/// <param name="Apply">Sets it.</param>
internal sealed record RuleThreshold(string RuleId, string Name, Func<RuleSettings, double, RuleSettings> Apply);

/// <summary>All thresholds that the configuration can set.</summary>
internal static class RuleThresholds
{
    private const double Milli = 1e-3;

    private static readonly ImmutableArray<RuleThreshold> All =
    [
        new(
            "busy-wait-delay",
            "start-up-milliseconds",
            (settings, value) => settings with { StartUpBusyWaitSeconds = value * Milli }
        ),
        new(
            "busy-wait-delay",
            "loop-milliseconds",
            (settings, value) => settings with { LoopBusyWaitSeconds = value * Milli }
        ),
    ];

    /// <summary>The thresholds by key.</summary>
    internal static ImmutableDictionary<string, RuleThreshold> ByName { get; } =
        All.ToImmutableDictionary(threshold => threshold.Name, StringComparer.Ordinal);

    /// <summary>The keys of a rule's thresholds.</summary>
    internal static IEnumerable<string> Of(string ruleId) =>
        All.Where(threshold => string.Equals(threshold.RuleId, ruleId, StringComparison.Ordinal))
            .Select(threshold => threshold.Name);
}
