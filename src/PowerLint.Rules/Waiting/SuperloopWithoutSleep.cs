using PowerLint.Analysis;

namespace PowerLint.Rules;

/// <summary>The endless loop of <c>main</c> never sleeps.</summary>
internal sealed class SuperloopWithoutSleep : IRule
{
    private const string Subject = "main()";

    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        if (context.Result.EndlessLoop is not { } loop)
        {
            return;
        }

        if (loop.HasSleep)
        {
            context.Clean(Subject);
            return;
        }

        // A sleep that nothing ends, on every way to the loop: the loop is only where the program would go on.
        var final = context.Points.FirstOrDefault(point =>
            point is { Sleeps: true, SleepEnabled: Tristate.Yes } && point.CanWakeAtAll() == Tristate.No
        );
        if (final is not null && loop.IsBehindFinalSleep)
        {
            context.Clean(Subject);
            return;
        }

        var point = context.Points.FirstOrDefault(point => point.Point.Kind == RestingKind.EndlessLoop);
        var certainty = point?.CertaintyOf(Tristate.Yes) ?? Certainty.Proven;
        context.Report(
            new Finding
            {
                RuleId = context.Rule.Id,
                Level = context.LevelOf(certainty),
                Certainty = certainty,
                Subjects = [Subject],
                Message =
                    "The endless loop of main() reaches no sleep instruction on any path: the CPU runs at full current for ever. "
                    + "Sleep at the end of each pass, with a wake source enabled for the work to come."
                    + (point is null ? "" : Wording.Doubt(certainty, point)),
                Range = loop.Range,
                Function = loop.Function,
                Point = point?.Point,
            }
        );
    }
}
