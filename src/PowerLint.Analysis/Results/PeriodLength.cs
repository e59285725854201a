using PowerLint.Devices;

namespace PowerLint.Analysis;

/// <summary>How long the period of an interrupt is in some state.</summary>
/// <param name="Way">The way in which it comes about.</param>
/// <param name="Pulses">Its length in pulses of the clock that is divided.</param>
public sealed record PeriodLength(Period Way, ulong Pulses)
{
    /// <summary>That clock in hertz; null for the CPU's.</summary>
    public double? ClockHertz => Way.ClockHertz;

    /// <summary>The length in seconds; null where the clock is not known.</summary>
    /// <param name="cpuHertz">The CPU's clock, or null.</param>
    public double? Seconds(double? cpuHertz) => Pulses / (ClockHertz ?? cpuHertz);

    /// <summary>The period of an interrupt with the registers as they are; null where they do not say, or the clock stands.</summary>
    public static PeriodLength? Of(Interrupt interrupt, StateAtPoint state)
    {
        ArgumentNullException.ThrowIfNull(interrupt);
        ArgumentNullException.ThrowIfNull(state);
        foreach (var way in interrupt.Periods)
        {
            switch (state.Evaluate(way.When))
            {
                case Tristate.Yes:
                    return PulsesOf(way, state) is { } pulses ? new PeriodLength(way, pulses) : null;
                case Tristate.Maybe:
                    return null;
            }
        }

        return null;
    }

    private static ulong? PulsesOf(Period way, StateAtPoint state)
    {
        var pulses = way.Counts;
        if (!way.Top.IsEmpty)
        {
            var shift = 0;
            foreach (var part in way.Top)
            {
                if (Known(part, state) is not { } value)
                {
                    return null;
                }

                pulses |= value << shift;
                shift += part.WidthBits;
            }

            pulses++;
        }

        foreach (var divider in way.Dividers)
        {
            if (
                Known(divider.Field, state) is not { } value
                || divider.Factors.FirstOrDefault(factor => factor.Value == value) is not { } factor
            )
            {
                return null;
            }

            pulses *= factor.DividesBy;
        }

        return pulses;
    }

    private static ulong? Known(FieldReference field, StateAtPoint state)
    {
        var bits = state.Read(field);
        var mask = field.Mask >> field.LowBit;
        return (bits.Known & mask) == mask ? bits.Value & mask : null;
    }
}
