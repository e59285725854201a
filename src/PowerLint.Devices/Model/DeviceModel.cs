using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>A part's model, resolved and checked: everything that the analysis and the rules know of it.</summary>
public sealed class DeviceModel
{
    /// <summary>The part as its compiler names it: <c>atmega328p</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The family's identifier: its file's name.</summary>
    public required string Family { get; init; }

    /// <summary>The processor: <c>avr</c>, <c>xmega</c>, <c>msp430</c>, <c>cortex-m0+</c>, … Decides what instructions mean.</summary>
    public required string Core { get; init; }

    /// <summary>The style that its programs are written in, as the headings of rule pages name it: <c>Newer AVR</c>; or empty.</summary>
    public string Style { get; init; } = "";

    /// <summary>
    /// The sections that the model has. One that is there and empty says that the part has nothing of the kind; one that is not
    /// there says nothing.
    /// </summary>
    public ImmutableArray<string> Sections { get; init; } = [];

    /// <summary>Names of the packages; the first is assumed where none is configured.</summary>
    public required ImmutableArray<string> Packages { get; init; }

    /// <summary>All registers, by ascending address, those that no address reaches last.</summary>
    public required ImmutableArray<Register> Registers { get; init; }

    /// <summary>
    /// Addresses by the names under which headers declare registers as external symbols, for the linker to place: every
    /// register's own name, and other names for registers and their bytes.
    /// </summary>
    public ImmutableArray<RegisterSymbol> Symbols { get; init; } = [];

    /// <summary>Registers whose writes act on others.</summary>
    public ImmutableArray<RegisterAlias> Aliases { get; init; } = [];

    /// <summary>Registers that one write reaches together.</summary>
    public ImmutableArray<SharedWrite> SharedWrites { get; init; } = [];

    /// <summary>Registers that are windows on tables.</summary>
    public ImmutableArray<RegisterWindow> Windows { get; init; } = [];

    /// <summary>Registers whose ones send another register's value to others.</summary>
    public ImmutableArray<MaskedWrite> MaskedWrites { get; init; } = [];

    /// <summary>Bits that follow others.</summary>
    public ImmutableArray<FollowingField> FollowingFields { get; init; } = [];

    /// <summary>Bits that are what a row of a table holds.</summary>
    public ImmutableArray<FieldLookup> Lookups { get; init; } = [];

    /// <summary>Bits that put registers back to their reset values.</summary>
    public ImmutableArray<RegisterReset> Resets { get; init; } = [];

    /// <summary>Change protections.</summary>
    public ImmutableArray<ChangeProtection> Protections { get; init; } = [];

    /// <summary>Clock gates.</summary>
    public ImmutableArray<ClockGate> Gates { get; init; } = [];

    /// <summary>All pads, by port and bit.</summary>
    public required ImmutableArray<Pin> Pins { get; init; }

    /// <summary>Clocks that can be routed to pins.</summary>
    public ImmutableArray<ClockOutput> ClockOutputs { get; init; } = [];

    /// <summary>Oscillators.</summary>
    public ImmutableArray<Oscillator> Oscillators { get; init; } = [];

    /// <summary>Regulators and voltage settings.</summary>
    public ImmutableArray<Regulator> Regulators { get; init; } = [];

    /// <summary>Sleep modes, shallowest first.</summary>
    public required ImmutableArray<SleepMode> SleepModes { get; init; }

    /// <summary>How it goes to sleep and wakes.</summary>
    public required SleepControl Sleep { get; init; }

    /// <summary>Peripherals.</summary>
    public required ImmutableArray<Peripheral> Peripherals { get; init; }

    /// <summary>Interrupt sources, by number.</summary>
    public required ImmutableArray<Interrupt> Interrupts { get; init; }

    /// <summary>Supply-current table.</summary>
    public ImmutableArray<SupplyCurrentRow> SupplyCurrents { get; init; } = [];

    /// <summary>What peripherals and oscillators add.</summary>
    public ImmutableArray<CurrentAdder> Adders { get; init; } = [];

    /// <summary>How long sleep modes take to end; of the rows of a mode, the first whose condition holds counts.</summary>
    public ImmutableArray<WakeUpTime> WakeUpTimes { get; init; } = [];

    /// <summary>Electrical figures of the pins, or null.</summary>
    public PinElectrics? PinElectrics { get; init; }

    /// <summary>CPU clock after reset with the factory's fuses, in hertz.</summary>
    public double ResetClockHertz { get; init; }

    /// <summary>Documents that the facts come from.</summary>
    public ImmutableArray<Citation> Sources { get; init; } = [];
}
