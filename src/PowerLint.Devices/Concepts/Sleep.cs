using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>A sleep mode.</summary>
public sealed class SleepMode
{
    /// <summary>The datasheet's name, kebab-case: <c>idle</c>, <c>power-down</c>.</summary>
    public required string Name { get; init; }

    /// <summary>1 for the shallowest; deeper modes draw less.</summary>
    public required int Depth { get; init; }

    /// <summary>When the sleep instruction enters it.</summary>
    public required Condition Selected { get; init; }

    /// <summary>Whether memory and pin levels are kept and the program goes on at the next statement.</summary>
    public bool Resumes { get; init; } = true;

    /// <summary>Whether what wakes from it needs the global enable; a mode that ends in a reset asks nobody.</summary>
    public bool WakingNeedsGlobalEnable { get; init; }

    /// <summary>Whether the mode cuts the digital input buffers (see <see cref="Pin.BufferKeptInSleep"/>).</summary>
    public bool CutsInputBuffers { get; init; }

    /// <inheritdoc/>
    public override string ToString() => Name;
}

/// <summary>An interrupt source. Several may share a vector, and then its name and number.</summary>
public sealed class Interrupt
{
    /// <summary>The vector as the vendor's header writes it: <c>WDT_vect</c>, <c>PORT1_VECTOR</c>, <c>TIM2_IRQHandler</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Other spellings that name the same vector.</summary>
    public ImmutableArray<string> OtherNames { get; init; } = [];

    /// <summary>
    /// Its number, as <c>__vector_N</c> counts; negative for an event that ends a sleep without a vector (a wake-up pin, say).
    /// </summary>
    public required int Number { get; init; }

    /// <summary>Whether it has a vector; an event without one only ends modes, and the program goes on, or starts anew.</summary>
    public bool HasVector => Number >= 0;

    /// <summary>The peripheral that raises it, or null.</summary>
    public string? Peripheral { get; init; }

    /// <summary>When its own enable bits are set (the global enable is apart).</summary>
    public required Condition Enabled { get; init; }

    /// <summary>
    /// Flags and busy bits whose change raises it: polling one of these is polling for this interrupt. The first one is the
    /// flag itself.
    /// </summary>
    public ImmutableArray<FieldReference> Flags { get; init; } = [];

    /// <summary>Flags that entering the handler clears.</summary>
    public bool HandlerClearsFlag { get; init; } = true;

    /// <summary>Bits that the hardware clears as the handler is entered, where <see cref="ClearedWhen"/> holds.</summary>
    public ImmutableArray<FieldReference> ClearedAtEntry { get; init; } = [];

    /// <summary>When the hardware clears <see cref="ClearedAtEntry"/>.</summary>
    public Condition ClearedWhen { get; init; } = Condition.Always;

    /// <summary>Sleep modes that it ends.</summary>
    public ImmutableArray<ModesWhen> Wakes { get; init; } = [];

    /// <summary>Whether it comes at a fixed period while its peripheral runs.</summary>
    public bool IsPeriodic { get; init; }

    /// <summary>How long that period is: the first way whose condition holds; empty where the model does not say.</summary>
    public ImmutableArray<Period> Periods { get; init; } = [];

    /// <inheritdoc/>
    public override string ToString() => Name;
}

/// <summary>A peripheral, as power sees it.</summary>
public sealed class Peripheral
{
    /// <summary>Instance name in the vendor's header, or the datasheet's short name.</summary>
    public required string Name { get; init; }

    /// <summary>When it is enabled.</summary>
    public required Condition On { get; init; }

    /// <summary>Its clock gate's name, or null.</summary>
    public string? Gate { get; init; }

    /// <summary>Sleep modes in which it draws current while on.</summary>
    public ImmutableArray<ModesWhen> DrawsIn { get; init; } = [];

    /// <summary>Whether it goes on drawing current behind a closed clock gate (an analog part that the gate does not switch off).</summary>
    public bool DrawsWhenGated { get; init; }

    /// <summary>Sleep modes in which it does its work.</summary>
    public ImmutableArray<ModesWhen> WorksIn { get; init; } = [];

    /// <summary>Whether it watches over the supply: a brown-out detector that the program switches.</summary>
    public bool GuardsSupply { get; init; }

    /// <summary>When its output is in use although it raises no interrupt (a waveform on a pin, a transfer under way).</summary>
    public Condition OutputInUse { get; init; } = Condition.Never;

    /// <summary>The registers that belong to it; touching one of them is using the peripheral.</summary>
    public ImmutableArray<Register> Registers { get; init; } = [];

    /// <summary>Bits to write to switch it off.</summary>
    public ImmutableArray<FieldCondition> SwitchOff { get; init; } = [];

    /// <inheritdoc/>
    public override string ToString() => Name;
}

/// <summary>How the part goes to sleep and wakes.</summary>
/// <param name="Enable">When the sleep instruction works; <see cref="Condition.Always"/> where nothing guards it.</param>
/// <param name="EnableField">The sleep-enable bit, or null.</param>
/// <param name="GlobalInterruptEnable">When interrupts are on globally.</param>
/// <param name="DebugInSleep">When something keeps clocks on for a debugger, and in which modes.</param>
/// <param name="SleepOnExit">The bit that sends the CPU back to sleep at a handler's return, or null.</param>
/// <param name="Trigger">What a write must leave for the part to go to sleep at once, or null.</param>
/// <param name="StatusRegister">
/// The CPU's status register where sleeping is setting a bit of it: a handler starts with it cleared, and returning puts back what
/// it was, or what the handler has made of that. Null where there is a sleep instruction.
/// </param>
/// <param name="StopsCpu">The bit of the status register that stops the CPU, or null.</param>
/// <param name="WaitsForEvent">
/// The internal bit that is 1 while the CPU waits for an event and 0 while it waits for an interrupt, or null where there is one
/// sleep instruction only.
/// </param>
/// <param name="PendingSetsEvent">
/// The bit that makes an event of an interrupt that comes up while interrupts are masked, or null: without it such an interrupt does not
/// end a wait for an event.
/// </param>
public sealed record SleepControl(
    Condition Enable,
    FieldReference? EnableField,
    FieldReference? GlobalInterruptEnable,
    ImmutableArray<ModesWhen> DebugInSleep,
    FieldReference? SleepOnExit = null,
    Condition? Trigger = null,
    Register? StatusRegister = null,
    FieldReference? StopsCpu = null,
    FieldReference? WaitsForEvent = null,
    FieldReference? PendingSetsEvent = null
)
{
    /// <summary>Bits that the hardware clears a few cycles after they were set: they hold for the sleep that follows, and no other.</summary>
    public ImmutableArray<FieldReference> ClearedBySleep { get; init; } = [];

    /// <summary>When an interrupt that is masked globally ends the sleep, in modes that it can end without the global enable.</summary>
    public Condition MaskedInterruptsWake() =>
        WaitsForEvent is null
            ? Condition.Always
            : new([
                [new FieldCondition(WaitsForEvent, [0])],
                .. PendingSetsEvent is null
                    ? []
                    : (ImmutableArray<ImmutableArray<FieldCondition>>)
                        [
                            [new FieldCondition(PendingSetsEvent, [1])],
                        ],
            ]);
}
