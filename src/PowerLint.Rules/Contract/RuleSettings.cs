using System.Collections.Immutable;

namespace PowerLint.Rules;

/// <summary>What the configuration says about the rules.</summary>
public sealed record RuleSettings
{
    /// <summary>The defaults.</summary>
    public static RuleSettings Default { get; } = new();

    /// <summary>
    /// Levels by rule identifier; null switches the rule off. The level replaces the page's: findings that a rule would lower
    /// to a note stay notes.
    /// </summary>
    public ImmutableDictionary<string, Level?> Levels { get; init; } =
        ImmutableDictionary.Create<string, Level?>(StringComparer.Ordinal);

    /// <summary>Shortest busy wait reported outside the endless loop and the handlers, in seconds.</summary>
    public double StartUpBusyWaitSeconds { get; init; } = 0.010;

    /// <summary>Shortest busy wait reported in the endless loop and in handlers, in seconds.</summary>
    public double LoopBusyWaitSeconds { get; init; } = 0.001;

    /// <summary>Whether a rule runs.</summary>
    public bool IsOn(string ruleId) => !Levels.TryGetValue(ruleId, out var level) || level is not null;
}
