using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A flag that wakes the part, that entering the handler does not clear, and that nothing else clears.</summary>
internal sealed class PendingWake : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var interrupt in context.Device.Interrupts.Where(interrupt => IsLatched(context, interrupt)))
        {
            var waking = context
                .Points.Where(point => point.Sleeps && point.IsWakeSource(interrupt) != Tristate.No)
                .ToArray();
            var peripheral = context.Device.Peripherals.FirstOrDefault(p =>
                string.Equals(p.Name, interrupt.Peripheral, StringComparison.Ordinal)
            );
            if (waking.Length > 0 && interrupt.Flags.Any(flag => context.Result.Clears(flag, peripheral)))
            {
                context.Clean(interrupt.Flags[0].Name);
                continue;
            }

            context.Report(
                waking.Select(point => Observe(context, interrupt, point)),
                group => Message(interrupt, group)
            );
        }
    }

    // What hardware sets and only the program clears; a handler that is not there ends in a reset.
    private static bool IsLatched(RuleContext context, Interrupt interrupt) =>
        !interrupt.HandlerClearsFlag
        && interrupt.Flags.Any(flag => (flag.Register.WriteOneToClear & flag.Mask) != 0)
        && context.Result.HandledInterrupts.Contains(interrupt);

    private static Observation Observe(RuleContext context, Interrupt interrupt, PointFacts point)
    {
        var certainty = point.CertaintyOf(point.IsWakeSource(interrupt))!.Value;
        return new Observation
        {
            Group = interrupt.Name,
            Subject = interrupt.Flags[0].Name,
            Certainty = certainty,
            Level = context.LevelOf(certainty),
            Cause = Cause.Of(point.Point),
            Point = point,
            Flow = point.State.DecisionsOf(interrupt.Enabled),
        };
    }

    private static string Message(Interrupt interrupt, ObservationGroup group) =>
        $"{interrupt.Name} can end this sleep, but nothing clears {Wording.List([.. interrupt.Flags.Select(flag => flag.Name)])}: "
        + "from the first wake-up on the interrupt stays pending, its handler comes again at once, and the part sleeps no more. "
        + "Write the flag back as 1 in the handler."
        + Wording.Doubt(group.First.Certainty, group.First.Point);
}
