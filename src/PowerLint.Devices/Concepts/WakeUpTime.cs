using System.Collections.Immutable;
using System.Globalization;

namespace PowerLint.Devices;

/// <summary>
/// How long some sleep modes take to end: from the event that wakes the part until the CPU runs again, or, where the mode ends in a
/// reset, until the program starts anew. A fixed time, pulses of clocks, or both, one after the other.
/// </summary>
/// <param name="Modes">The sleep modes, by name.</param>
/// <param name="When">When it takes so long (fuses that choose a start-up time, a regulator's setting).</param>
/// <param name="Cycles">Pulses of clocks that are waited for; none where only a fixed time is known.</param>
/// <param name="TypicalMicroseconds">Typical fixed time, or null.</param>
/// <param name="MaximumMicroseconds">Maximum fixed time, or null.</param>
/// <param name="TypicalNanocoulombs">Typical charge that waking draws, or null.</param>
/// <param name="SupplyVolts">At which supply, or null where it does not matter or is not told.</param>
/// <param name="Source">Where the figure stands.</param>
public sealed record WakeUpTime(
    ImmutableArray<string> Modes,
    Condition When,
    ImmutableArray<ClockCycles> Cycles,
    double? TypicalMicroseconds,
    double? MaximumMicroseconds,
    double? TypicalNanocoulombs,
    double? SupplyVolts,
    Citation Source
)
{
    /// <summary>The fixed time, the typical one where it is told.</summary>
    private double? FixedMicroseconds => TypicalMicroseconds ?? MaximumMicroseconds;

    /// <summary>The whole time, or null where the frequency of one of the clocks is not known.</summary>
    /// <param name="cpuHertz">The CPU clock, or null where nobody knows.</param>
    public double? Microseconds(double? cpuHertz)
    {
        var sum = FixedMicroseconds ?? 0;
        foreach (var cycles in Cycles)
        {
            if ((cycles.IsCpu ? cpuHertz : cycles.Hertz) is not { } hertz || hertz <= 0)
            {
                return null;
            }

            sum += cycles.Count * 1e6 / hertz;
        }

        return sum;
    }

    /// <summary>The time for people: <c>6 cycles of main and 4 of the CPU</c>; <c>5 µs (at most 8 µs)</c>.</summary>
    public override string ToString()
    {
        var cycles = new List<string>();
        foreach (var clock in Cycles)
        {
            var noun =
                cycles.Count > 0 ? ""
                : clock.Count is 1 ? " cycle"
                : " cycles";
            cycles.Add(string.Create(CultureInfo.InvariantCulture, $"{clock.Count:0.##}{noun} of {clock.Of}"));
        }

        var time = (TypicalMicroseconds, MaximumMicroseconds) switch
        {
            ({ } typical, { } maximum) => $"{Time(typical)} (at most {Time(maximum)})",
            ({ } typical, null) => Time(typical),
            (null, { } maximum) => "at most " + Time(maximum),
            _ => null,
        };
        return string.Join(" and ", time is null ? cycles : cycles.Prepend(time));
    }

    /// <summary>A time: <c>8 µs</c>, <c>1.5 ms</c>.</summary>
    public static string Time(double microseconds) =>
        microseconds switch
        {
            >= 1e6 => string.Create(CultureInfo.InvariantCulture, $"{microseconds / 1e6:0.###} s"),
            >= 1e3 => string.Create(CultureInfo.InvariantCulture, $"{microseconds / 1e3:0.###} ms"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{microseconds:0.###} µs"),
        };
}

/// <summary>Pulses of a clock.</summary>
/// <param name="Oscillator">An oscillator of unknown frequency, by name; null where it is another clock.</param>
/// <param name="Hertz">The clock in hertz; null for an oscillator, and for the CPU's clock.</param>
/// <param name="Count">How many.</param>
public sealed record ClockCycles(string? Oscillator, double? Hertz, double Count)
{
    /// <summary>Whether it is the clock that the CPU runs from.</summary>
    public bool IsCpu => Oscillator is null && Hertz is null;

    /// <summary>The clock for people.</summary>
    internal string Of =>
        (Oscillator, Hertz) switch
        {
            ({ } oscillator, _) => oscillator,
            (null, >= 1e6) => string.Create(CultureInfo.InvariantCulture, $"{Hertz / 1e6:0.###} MHz"),
            (null, { }) => string.Create(CultureInfo.InvariantCulture, $"{Hertz / 1e3:0.###} kHz"),
            _ => "the CPU",
        };
}
