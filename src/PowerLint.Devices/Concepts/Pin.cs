using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>What a peripheral uses a pin for.</summary>
public enum PinFunctionKind
{
    /// <summary>The peripheral reads the pin: the outside drives it.</summary>
    Input,

    /// <summary>The peripheral drives the pin.</summary>
    Output,

    /// <summary>An analog signal or a crystal.</summary>
    Analog,

    /// <summary>Reset, debug or programming: never floating in that function.</summary>
    Reserved,
}

/// <summary>A use of a pin by something other than the port.</summary>
/// <param name="Name">The signal: <c>RXD</c>, <c>ADC3</c>, <c>RESET</c>.</param>
/// <param name="Peripheral">The peripheral, or null.</param>
/// <param name="Kind">What it does with the pin.</param>
/// <param name="When">When it has the pin.</param>
/// <param name="Latched">
/// Whether the pin counts as used once the condition held anywhere in the program (a converter that is switched off between
/// samples still owns its inputs).
/// </param>
public sealed record PinFunction(string Name, string? Peripheral, PinFunctionKind Kind, Condition When, bool Latched);

/// <summary>A pad of the chip.</summary>
public sealed class Pin
{
    /// <summary>As the datasheet writes it: <c>PA3</c>, <c>P1.3</c>, <c>P0.03</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The port: <c>A</c>, <c>1</c>.</summary>
    public required string Port { get; init; }

    /// <summary>Its bit in the port.</summary>
    public required int Bit { get; init; }

    /// <summary>Packages that bring it out; a pad that no package of the part brings out still floats inside.</summary>
    public required ImmutableArray<string> BondedIn { get; init; }

    /// <summary>When the port drives the pin.</summary>
    public required Condition Output { get; init; }

    /// <summary>The level that the port drives: high where this holds.</summary>
    public required Condition OutputHigh { get; init; }

    /// <summary>When an internal pull-up is in force, global switches included.</summary>
    public required Condition PullUp { get; init; }

    /// <summary>When an internal pull-down or bus keeper is in force.</summary>
    public Condition PullDown { get; init; } = Condition.Never;

    /// <summary>When the digital input buffer is off.</summary>
    public Condition InputBufferOff { get; init; } = Condition.Never;

    /// <summary>When the buffer stays on in a sleep mode that otherwise cuts it (pins enabled as interrupts).</summary>
    public Condition BufferKeptInSleep { get; init; } = Condition.Never;

    /// <summary>When the program has given the pin an interrupt.</summary>
    public Condition InterruptEnabled { get; init; } = Condition.Never;

    /// <summary>The bit that the program reads the pin's level from, or null.</summary>
    public FieldReference? Level { get; init; }

    /// <summary>What else uses the pin.</summary>
    public ImmutableArray<PinFunction> Functions { get; init; } = [];

    /// <summary>Bits to write to make the pin an output driven low: the usual way to park it. Register writes by field and value.</summary>
    public ImmutableArray<FieldCondition> ParkAsOutputLow { get; init; } = [];

    /// <summary>Bits to write to give the pin its pull-up.</summary>
    public ImmutableArray<FieldCondition> ParkWithPullUp { get; init; } = [];

    /// <summary>Bits to write to switch its input buffer off; empty where it cannot be.</summary>
    public ImmutableArray<FieldCondition> ParkWithBufferOff { get; init; } = [];

    /// <inheritdoc/>
    public override string ToString() => Name;
}
