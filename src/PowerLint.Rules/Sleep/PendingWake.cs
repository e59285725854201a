using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A flag that wakes the part, that entering the handler does not clear, and that nothing else clears.</summary>
internal sealed class PendingWake : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var interrupt in context.Device.Interrupts.Where(interrupt => IsLeftToTheProgram(context, interrupt)))
        {
            var peripheral = context.Device.Peripherals.FirstOrDefault(p =>
                string.Equals(p.Name, interrupt.Peripheral, StringComparison.Ordinal)
            );
            foreach (var (flags, enabled) in Ways(interrupt).Where(way => way.Flags.Any(IsLatched)))
            {
                var waking = context
                    .Points.Where(point => point.Sleeps && CanWake(point, interrupt, enabled) != Tristate.No)
                    .ToArray();
                if (waking.Length > 0 && flags.Any(flag => context.Result.Clears(flag, peripheral)))
                {
                    context.Clean(flags[0].Name);
                    continue;
                }

                context.Report(
                    waking.Select(point => Observe(context, interrupt, flags, enabled, point)),
                    group => Message(interrupt, flags, group)
                );
            }
        }
    }

    // A handler that is not there ends in a reset.
    private static bool IsLeftToTheProgram(RuleContext context, Interrupt interrupt) =>
        !interrupt.HandlerClearsFlag && context.Result.HandledInterrupts.Contains(interrupt);

    // What hardware sets and only a write of the program clears. Other flags go by themselves, once data is read, say.
    private static bool IsLatched(FieldReference flag) =>
        ((flag.Register.WriteOneToClear | flag.Register.WriteZeroToClear) & flag.Mask) != 0;

    // With as many flags as ways to be enabled, each flag has its own; else any of the flags may be the one.
    private static IEnumerable<(ImmutableArray<FieldReference> Flags, Condition Enabled)> Ways(Interrupt interrupt)
    {
        var alternatives = interrupt.Enabled.Alternatives;
        return alternatives.Length == interrupt.Flags.Length
            ? interrupt.Flags.Select((flag, i) => (ImmutableArray.Create(flag), new Condition([alternatives[i]])))
            : [(interrupt.Flags, interrupt.Enabled)];
    }

    private static Tristate CanWake(PointFacts point, Interrupt interrupt, Condition enabled) =>
        point.State.Evaluate(enabled).And(point.CanWake(interrupt));

    private static Observation Observe(
        RuleContext context,
        Interrupt interrupt,
        ImmutableArray<FieldReference> flags,
        Condition enabled,
        PointFacts point
    )
    {
        var certainty = point.CertaintyOf(CanWake(point, interrupt, enabled))!.Value;
        return new Observation
        {
            Group = interrupt.Name,
            Subject = flags[0].Name,
            Certainty = certainty,
            Level = context.LevelOf(certainty),
            Cause = Cause.Of(point.Point),
            Point = point,
            Flow = point.State.DecisionsOf(enabled),
        };
    }

    private static string Message(Interrupt interrupt, ImmutableArray<FieldReference> flags, ObservationGroup group) =>
        $"{interrupt.Name} can end this sleep, but nothing clears {Wording.List([.. flags.Select(flag => flag.Name)])}: "
        + "from the first wake-up on the interrupt stays pending, its handler comes again at once, and the part sleeps no more. "
        + $"{(flags.Any(IsClearedByOnes) ? "Write the flag back as 1" : "Write 0 to the flag")} in the handler."
        + Wording.Doubt(group.First.Certainty, group.First.Point);

    private static bool IsClearedByOnes(FieldReference flag) => (flag.Register.WriteOneToClear & flag.Mask) != 0;
}
