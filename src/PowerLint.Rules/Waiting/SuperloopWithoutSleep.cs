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

        // A loop behind a sleep that nothing ends is never reached, so the analysis does not know it.
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
