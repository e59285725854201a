using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A sleep point that nothing can end.</summary>
internal sealed class NoWakeSource : IRule
{
    private const string Subject = "SLEEP";

    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        var places = context.Points.Where(point => point.Sleeps).GroupBy(point => point.Point.Range);
        foreach (var place in places)
        {
            var lost = place.Where(point => point.CanWakeAtAll() == Tristate.No).ToArray();
            if (lost.Length == 0)
            {
                context.Clean(Subject);
                continue;
            }

            // With several ways to the instruction, one of which is fine, it does not stop for ever on all of them.
            var certainty =
                lost.Length == place.Count() ? lost[0].CertaintyOf(Tristate.Yes)!.Value : Certainty.Possible;
            context.Report(
                context.AtPoint(
                    lost[0],
                    certainty,
                    [Subject],
                    Message(context.Device, lost[0]) + Wording.Doubt(certainty, lost[0]),
                    FlowOf(context.Device, lost[0])
                )
            );
        }
    }

    private static string Message(DeviceModel device, PointFacts point)
    {
        var enabled = device.Interrupts.Where(interrupt => point.IsEnabled(interrupt) != Tristate.No).ToArray();
        var waking = enabled.Where(interrupt => point.CanWake(interrupt) != Tristate.No).ToArray();
        var why = (enabled.Length, waking.Length) switch
        {
            (_, > 0) =>
                $"{Wording.List([.. waking.Take(4).Select(interrupt => interrupt.Name)])} could, but interrupts are off globally",
            (> 0, _) =>
                $"{Wording.List([.. enabled.Take(4).Select(interrupt => interrupt.Name)])} {Wording.Number(enabled.Length, "is", "are")} enabled but cannot",
            _ => "no interrupt is enabled",
        };
        return $"Nothing can end this sleep {Wording.Where(point)} but a reset: {why}. "
            + "Enable a wake source that works in this mode right before sleeping.";
    }

    private static System.Collections.Immutable.ImmutableArray<Decision> FlowOf(DeviceModel device, PointFacts point) =>
        device.Sleep.GlobalInterruptEnable is { } enable ? point.State.DecisionsOf(enable) : [];
}
