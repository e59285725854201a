using System.Collections.Immutable;
using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>All that the analysis found out about an image on a device. Immutable; the only thing that later stages see.</summary>
public abstract class AnalysisResult
{
    /// <summary>The device.</summary>
    public required DeviceModel Device { get; init; }

    /// <summary>The first statement of <c>main</c>: where findings point that nothing in the source caused.</summary>
    public required SourceRange FirstStatement { get; init; }

    /// <summary>Where the CPU rests, in order of first visit.</summary>
    public required ImmutableArray<RestingPoint> RestingPoints { get; init; }

    /// <summary>The endless loop of <c>main</c>; null where <c>main</c> returns or never gets to one.</summary>
    public required EndlessLoop? EndlessLoop { get; init; }

    /// <summary>Sleep instructions that a test of what handlers write guards, in source order.</summary>
    public ImmutableArray<GuardedSleep> GuardedSleeps { get; init; } = [];

    /// <summary>Writes without effect, by ordinal.</summary>
    public required ImmutableArray<LostWrite> LostWrites { get; init; }

    /// <summary>Busy waits, in source order.</summary>
    public required ImmutableArray<BusyWait> BusyWaits { get; init; }

    /// <summary>Periodic wake-ups, by interrupt number.</summary>
    public ImmutableArray<PeriodicWake> PeriodicWakes { get; init; } = [];

    /// <summary>The CPU's clock in hertz, or null.</summary>
    public double? CpuHertz { get; init; }

    /// <summary>Where that comes from, for people: <c>F_CPU</c>, <c>configuration</c>, <c>reset clock</c>.</summary>
    public string CpuClockBasis { get; init; } = "unknown";

    /// <summary>Polling loops, in source order.</summary>
    public required ImmutableArray<PollingLoop> PollingLoops { get; init; }

    /// <summary>What was cut short or is not known.</summary>
    public required ImmutableArray<AnalysisLimit> Limits { get; init; }

    /// <summary>Interrupts that have a handler in the image.</summary>
    public required ImmutableArray<Interrupt> HandledInterrupts { get; init; }

    /// <summary>Whether the program ever reads these bits (of an input register, say).</summary>
    public abstract bool Reads(FieldReference field);

    /// <summary>Whether the program ever writes any of a peripheral's registers, or reads its data.</summary>
    public abstract bool Uses(Peripheral peripheral);

    /// <summary>Places outside start-up, in the endless loop and in handlers, where the program changes these bits or may.</summary>
    public abstract IEnumerable<SourceRange> ChangesOf(FieldReference field);

    /// <summary>
    /// Whether the program, in the endless loop or in a handler, may clear a flag: by a write, or by touching what its peripheral
    /// receives or converts.
    /// </summary>
    public abstract bool Clears(FieldReference flag, Peripheral? peripheral);

    /// <summary>
    /// Whether a latched condition (<see cref="PinFunction.Latched"/>) held anywhere: yes where it did on some path for sure,
    /// maybe where it could have.
    /// </summary>
    public abstract Tristate EverHeld(Condition condition);

    /// <summary>Writes at which a latched condition came to hold, by ordinal.</summary>
    public abstract ImmutableArray<Decision> DecisionsEverHeld(Condition condition);
}
