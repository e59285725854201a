using System.Collections.Immutable;

namespace PowerLint.Rules;

/// <summary>What the configuration says about the board and how the part is run.</summary>
/// <param name="Pins">What each pin is wired to, by the pin's name.</param>
/// <param name="Package">The package, or null for the model's first.</param>
/// <param name="SupplyVolts">The supply, or null.</param>
public sealed record BoardFacts(ImmutableDictionary<string, BoardPin> Pins, string? Package, double? SupplyVolts)
{
    /// <summary>Nothing is known.</summary>
    public static BoardFacts None { get; } = new(ImmutableDictionary<string, BoardPin>.Empty, null, null);

    /// <summary>By the names of regulators, whether the board carries what the lower setting needs.</summary>
    public ImmutableDictionary<string, bool> FittedRegulators { get; init; } = ImmutableDictionary<string, bool>.Empty;
}

/// <summary>A level, or either.</summary>
public enum WireLevel
{
    /// <summary>Low.</summary>
    Low,

    /// <summary>High.</summary>
    High,

    /// <summary>Either, but always one of them.</summary>
    Either,
}

/// <summary>What a pin is wired to.</summary>
/// <param name="Load">What it switches, or null.</param>
/// <param name="Active">The level at which the load draws current.</param>
/// <param name="Milliamps">What the load draws, or null.</param>
/// <param name="Pull">Where an external resistor pulls it, or null.</param>
/// <param name="PullOhms">The resistor, or null.</param>
/// <param name="Driven">The level that something outside drives, or null.</param>
/// <param name="IsConnected">False where the pad is left open.</param>
public sealed record BoardPin(
    string? Load = null,
    WireLevel? Active = null,
    double? Milliamps = null,
    WireLevel? Pull = null,
    double? PullOhms = null,
    WireLevel? Driven = null,
    bool IsConnected = true
);
