using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>How long the part takes to wake, where the model tells it.</summary>
public static class WakeUp
{
    /// <summary>
    /// The row that holds with the registers and fuses as they are: the first one of the mode that is not ruled out; null where the
    /// model has none, or where it depends on what is not known.
    /// </summary>
    /// <param name="device">The device.</param>
    /// <param name="state">The registers, or null where nothing is known of them.</param>
    /// <param name="mode">The sleep mode's name.</param>
    public static WakeUpTime? RowOf(DeviceModel device, StateAtPoint? state, string mode)
    {
        ArgumentNullException.ThrowIfNull(device);
        foreach (var row in device.WakeUpTimes.Where(row => row.Modes.Contains(mode, StringComparer.Ordinal)))
        {
            var holds =
                row.When.Alternatives.Any(parts => parts.IsEmpty) ? Tristate.Yes
                : state is null ? Tristate.Maybe
                : state.Evaluate(row.When);
            if (holds != Tristate.No)
            {
                return holds == Tristate.Yes ? row : null;
            }
        }

        return null;
    }

    /// <summary>The time for people, with what it comes to: <c>6 cycles of 8 MHz and 4 of the CPU (4.75 µs)</c>; null where it is not known.</summary>
    internal static string? Of(RuleContext context, PointFacts point, SleepMode mode) =>
        RowOf(context.Device, point.State, mode.Name) switch
        {
            null => null,
            { Cycles.IsEmpty: false } row when row.Microseconds(context.Result.CpuHertz) is { } time =>
                $"{row} ({WakeUpTime.Time(time)})",
            var row => row.ToString(),
        };
}
