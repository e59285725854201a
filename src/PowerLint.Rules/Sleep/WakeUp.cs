using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>How long the part takes to wake, where the model tells it.</summary>
internal static class WakeUp
{
    /// <summary>
    /// The time with the registers and fuses as they are at a point: <c>6 cycles of main and 4 of the CPU</c>; null where the model
    /// does not tell, or where it depends on what is not known there.
    /// </summary>
    public static string? Of(RuleContext context, PointFacts point, SleepMode mode)
    {
        var row = context
            .Device.WakeUpTimes.Where(row => row.Modes.Contains(mode.Name, StringComparer.Ordinal))
            .Select(row => (Row: row, Holds: point.State.Evaluate(row.When)))
            .FirstOrDefault(entry => entry.Holds != Tristate.No);
        if (row is not { Row: { } found, Holds: Tristate.Yes })
        {
            return null;
        }

        return !found.Cycles.IsEmpty && found.Microseconds(context.Result.CpuHertz) is { } time
            ? $"{found} ({WakeUpTime.Time(time)})"
            : found.ToString();
    }
}
