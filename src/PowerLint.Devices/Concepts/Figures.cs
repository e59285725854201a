using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>A row of the datasheet's supply-current table.</summary>
/// <param name="Mode">A sleep mode's name, or <c>active</c>.</param>
/// <param name="ClockSource">What clocks the part, or null.</param>
/// <param name="Hertz">The clock, or null.</param>
/// <param name="SupplyVolts">The supply.</param>
/// <param name="TypicalMicroamps">Typical current.</param>
/// <param name="MaximumMicroamps">Maximum current, or null.</param>
/// <param name="With">Peripherals that were on (watchdog, brown-out detector), by name.</param>
/// <param name="Source">Where the figure stands.</param>
public sealed record SupplyCurrentRow(
    string Mode,
    string? ClockSource,
    double? Hertz,
    double SupplyVolts,
    double TypicalMicroamps,
    double? MaximumMicroamps,
    ImmutableArray<string> With,
    Citation Source
);

/// <summary>What a peripheral, oscillator or detector adds.</summary>
/// <param name="Name">The peripheral, oscillator or clock output.</param>
/// <param name="SupplyVolts">At which supply.</param>
/// <param name="Hertz">At which clock, or null.</param>
/// <param name="TypicalMicroamps">Typical current added.</param>
/// <param name="Source">Where the figure stands.</param>
public sealed record CurrentAdder(
    string Name,
    double SupplyVolts,
    double? Hertz,
    double TypicalMicroamps,
    Citation Source
);

/// <summary>Electrical figures of the pins.</summary>
/// <param name="PullUpOhmsMinimum">Smallest pull-up resistance.</param>
/// <param name="PullUpOhmsMaximum">Largest pull-up resistance.</param>
/// <param name="InputLeakageMicroampsMaximum">Largest input leakage.</param>
/// <param name="Source">Where the figures stand.</param>
public sealed record PinElectrics(
    double PullUpOhmsMinimum,
    double PullUpOhmsMaximum,
    double InputLeakageMicroampsMaximum,
    Citation Source
);
