using System.Collections.Immutable;
using PowerLint.Rules;

namespace PowerLint.CommandLine;

/// <summary>What <c>powerlint.yaml</c> says. Everything is optional.</summary>
internal sealed record Settings
{
    /// <summary>No file.</summary>
    internal static Settings None { get; } = new();

    /// <summary>The file, absolute, or null where there is none.</summary>
    internal string? File { get; init; }

    /// <summary>A hash of that file; empty without one.</summary>
    internal ImmutableArray<byte> Hash { get; init; } = [];

    /// <summary>The file as errors name it.</summary>
    internal string Shown { get; init; } = SettingsFile.Name;

    /// <summary>The device.</summary>
    internal string? Device { get; init; }

    /// <summary>The package.</summary>
    internal string? Package { get; init; }

    /// <summary>The line that names the package.</summary>
    internal int PackageLine { get; init; }

    /// <summary>The supply in volts.</summary>
    internal double? SupplyVolts { get; init; }

    /// <summary>The CPU clock in hertz.</summary>
    internal double? CpuHertz { get; init; }

    /// <summary>Fuses and option bytes, by field name, with the line that gives them.</summary>
    internal ImmutableArray<OptionSetting> Options { get; init; } = [];

    /// <summary>What the pins are wired to.</summary>
    internal ImmutableDictionary<string, BoardPin> Pins { get; init; } = ImmutableDictionary<string, BoardPin>.Empty;

    /// <summary>The lines that name pins, to point at those that the device lacks.</summary>
    internal ImmutableArray<(string Pin, int Line)> PinLines { get; init; } = [];

    /// <summary>By the names of regulators, whether the board carries what the lower setting needs.</summary>
    internal ImmutableDictionary<string, bool> FittedRegulators { get; init; } =
        ImmutableDictionary<string, bool>.Empty;

    /// <summary>The lines that name regulators.</summary>
    internal ImmutableArray<(string Regulator, int Line)> RegulatorLines { get; init; } = [];

    /// <summary>Levels and thresholds by rule.</summary>
    internal ImmutableDictionary<string, RuleSetting> Rules { get; init; } =
        ImmutableDictionary<string, RuleSetting>.Empty;

    /// <summary>Paths below the file's folder in which findings are not reported; <c>*</c> and <c>**</c> match.</summary>
    internal ImmutableArray<string> Excluded { get; init; } = [];

    /// <summary>What changes about rules below some paths, in the file's order.</summary>
    internal ImmutableArray<PathRule> PathRules { get; init; } = [];

    /// <summary>The battery, or null. For current budgets; a check does not need it.</summary>
    internal BatterySetting? Battery { get; init; }

    /// <summary>How the product spends its day. For current budgets; a check does not need it.</summary>
    internal ImmutableArray<ProfilePhase> Profile { get; init; } = [];

    /// <summary>What the rules are told.</summary>
    internal RuleSettings RuleSettings()
    {
        var levels = Rules
            .Where(rule => rule.Value.IsOff || rule.Value.Level is not null)
            .ToImmutableDictionary(rule => rule.Key, rule => rule.Value.Level, StringComparer.Ordinal);
        var settings = new RuleSettings { Levels = levels };
        foreach (var (name, value) in Rules.Values.SelectMany(rule => rule.Thresholds))
        {
            settings = RuleThresholds.ByName[name].Apply(settings, value);
        }

        return settings;
    }

    /// <summary>The folder that paths in the file start from.</summary>
    internal string? Folder => Path.GetDirectoryName(File);
}

/// <summary>A fuse or option field.</summary>
/// <param name="Name">Its name in the device model.</param>
/// <param name="Value">Its value.</param>
/// <param name="Line">The line that says so.</param>
internal sealed record OptionSetting(string Name, ulong Value, int Line);

/// <summary>What the configuration changes about a rule.</summary>
/// <param name="IsOff">Whether it is switched off.</param>
/// <param name="Level">The level of its findings, or null for the rule's own.</param>
/// <param name="Thresholds">Its thresholds by name.</param>
/// <param name="Line">The line that names it.</param>
internal sealed record RuleSetting(bool IsOff, Level? Level, ImmutableDictionary<string, double> Thresholds, int Line);

/// <summary>The battery.</summary>
/// <param name="MilliampHours">What it holds.</param>
/// <param name="UsablePercent">How much of that the product can use before its supply is too low.</param>
internal sealed record BatterySetting(double MilliampHours, double UsablePercent);

/// <summary>A phase of the duty profile.</summary>
/// <param name="Name">For people.</param>
/// <param name="Seconds">How long it lasts.</param>
/// <param name="EverySeconds">How often it comes.</param>
internal sealed record ProfilePhase(string Name, double Seconds, double EverySeconds);
