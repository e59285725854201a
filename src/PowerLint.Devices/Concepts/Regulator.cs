using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>A voltage regulator, or a setting of the core's voltage, that has a setting that draws less in sleep.</summary>
/// <param name="Name">Its name in the datasheet.</param>
/// <param name="Modes">Sleep modes in which the choice matters.</param>
/// <param name="LowPower">When the setting that draws less is selected.</param>
/// <param name="NeededBy">What needs the full setting while it runs in such a mode.</param>
/// <param name="BoardNeeds">What the board must carry for the lower setting (an inductor), or null.</param>
public sealed record Regulator(
    string Name,
    ImmutableArray<ModesWhen> Modes,
    Condition LowPower,
    ImmutableArray<RegulatorConsumer> NeededBy,
    string? BoardNeeds
);

/// <summary>A peripheral or oscillator that needs a regulator's full setting.</summary>
/// <param name="Name">The peripheral's or oscillator's name.</param>
/// <param name="When">When it does.</param>
public sealed record RegulatorConsumer(string Name, Condition When);
