using PowerLint.Analysis;

namespace PowerLint.Rules;

/// <summary>A wait of fixed length that keeps the CPU running.</summary>
internal sealed class BusyWaitDelay : IRule
{
    // A delay library rounds to whole loop turns: 1 ms asked for may come out as 0.998 ms.
    private const double Rounding = 0.99;

    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var wait in context.Result.BusyWaits)
        {
            var least =
                wait.Context == RunContext.StartUp
                    ? context.Settings.StartUpBusyWaitSeconds
                    : context.Settings.LoopBusyWaitSeconds;
            if (Seconds(wait) is { } seconds && seconds >= least * Rounding)
            {
                context.Report(
                    new Finding
                    {
                        RuleId = context.Rule.Id,
                        Level = context.LevelOf(Certainty.Proven),
                        Certainty = Certainty.Proven,
                        Subjects = [wait.Function + "()"],
                        Message = Message(wait, seconds),
                        Range = wait.Range,
                        Function = wait.Function,
                    }
                );
            }
        }
    }

    private static double? Seconds(BusyWait wait) => wait.Seconds ?? wait.Cycles / wait.ClockHertz;

    private static string Message(BusyWait wait, double seconds)
    {
        var how = wait switch
        {
            { Callee: { } callee } => $"calls {callee}()",
            { Kind: WaitKind.TickCount } => "spins until a handler has counted far enough",
            { Kind: WaitKind.CycleIntrinsic } => "burns cycles",
            _ => "counts in an empty loop",
        };
        var clock = wait.ClockHertz is { } hertz ? $" at {Wording.Frequency(hertz)} ({wait.ClockBasis})" : "";
        var when = wait.Context switch
        {
            RunContext.StartUp => "before the endless loop",
            RunContext.EndlessLoop => "in the endless loop",
            _ => "in an interrupt handler",
        };
        return $"{wait.Function}() {how} and keeps the CPU running for {Wording.Time(seconds)}{clock}, {when}. "
            + "Let a timer end the wait and sleep meanwhile.";
    }
}
