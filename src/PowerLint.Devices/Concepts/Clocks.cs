using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>A clock that can be routed to a pin.</summary>
/// <param name="Name">The output: <c>CLKO</c>, <c>MCO</c>.</param>
/// <param name="Pin">The pin's name, or null where it depends.</param>
/// <param name="On">When it is routed.</param>
/// <param name="RunsIn">Sleep modes in which the clock goes on.</param>
public sealed record ClockOutput(string Name, string? Pin, Condition On, ImmutableArray<ModesWhen> RunsIn);

/// <summary>An oscillator or PLL.</summary>
/// <param name="Name">Its name in the datasheet.</param>
/// <param name="On">When it is enabled.</param>
/// <param name="RunsIn">Sleep modes in which it runs although nothing asks for it.</param>
/// <param name="Consumers">Peripherals that may need it, with the condition under which each does.</param>
public sealed record Oscillator(
    string Name,
    Condition On,
    ImmutableArray<ModesWhen> RunsIn,
    ImmutableArray<OscillatorConsumer> Consumers
);

/// <summary>A peripheral that runs from an oscillator.</summary>
/// <param name="Peripheral">Its name.</param>
/// <param name="When">When it does.</param>
public sealed record OscillatorConsumer(string Peripheral, Condition When);

/// <summary>A clock gate or power-reduction bit.</summary>
/// <param name="Name">For people: <c>PRR.PRADC</c>.</param>
/// <param name="Open">When the clock reaches the peripherals.</param>
/// <param name="Peripherals">The peripherals behind it.</param>
/// <param name="Registers">The registers behind it.</param>
/// <param name="LosesWrites">Whether writes to those registers are lost while it is closed.</param>
public sealed record ClockGate(
    string Name,
    Condition Open,
    ImmutableArray<string> Peripherals,
    ImmutableArray<Register> Registers,
    bool LosesWrites
);
