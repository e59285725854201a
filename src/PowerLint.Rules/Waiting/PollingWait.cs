using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A loop that spins on a flag that could raise an interrupt.</summary>
internal sealed class PollingWait : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        var loops = context
            .Result.PollingLoops.Where(loop => loop.Context != RunContext.StartUp)
            .GroupBy(loop => (loop.Range, loop.Register));
        foreach (var same in loops)
        {
            var loop = same.First();
            if (InterruptOf(context.Device, loop) is not { } interrupt)
            {
                context.Clean(loop.Register.Name);
                continue;
            }

            context.Report(
                new Finding
                {
                    RuleId = context.Rule.Id,
                    Level = context.LevelOf(Certainty.Proven),
                    Certainty = Certainty.Proven,
                    Subjects = [loop.Register.Name],
                    Message = Message(context.Device, loop, interrupt),
                    Range = loop.Range,
                    Function = loop.Function,
                    Related =
                    [
                        .. same.SelectMany(each => new Cause(each.Range, each.Function, each.Calls).RelatedCalls())
                            .DistinctBy(related => related.Range),
                    ],
                }
            );
        }
    }

    private static Interrupt? InterruptOf(DeviceModel device, PollingLoop loop) =>
        device.Interrupts.FirstOrDefault(interrupt =>
            interrupt.Flags.Any(flag => flag.Register == loop.Register && (flag.Mask & loop.Mask) != 0)
        );

    private static string Message(DeviceModel device, PollingLoop loop, Interrupt interrupt)
    {
        var flag = interrupt.Flags.First(flag => flag.Register == loop.Register && (flag.Mask & loop.Mask) != 0);
        var where = loop.Context == RunContext.Handler ? "An interrupt handler" : "The endless loop";
        var sleep = device.SleepModes.IsEmpty ? "" : " and sleep until it comes";
        return $"{where} spins on {flag.Name}, although its change can raise {interrupt.Name}. Enable that interrupt{sleep}.";
    }
}
