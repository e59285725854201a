using PowerLint.Analysis;

namespace PowerLint.Rules;

/// <summary>Passes of the endless loop that neither sleep nor work, until a handler changes a variable.</summary>
internal sealed class SkippedSleep : IRule
{
    private const string Subject = "main()";

    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        if (context.Result.EndlessLoop is not { HasSleep: true } loop)
        {
            return;
        }

        if (loop.SkippedSleeps.IsEmpty)
        {
            context.Clean(Subject);
        }

        var point = context.Points.FirstOrDefault(point => point.Sleeps);
        foreach (var skip in loop.SkippedSleeps)
        {
            var certainty = point?.CertaintyOf(skip.IsCertain ? Tristate.Yes : Tristate.Maybe) ?? Certainty.Possible;
            context.Report(
                new Finding
                {
                    RuleId = context.Rule.Id,
                    Level = context.LevelOf(certainty),
                    Certainty = certainty,
                    Subjects = [Subject],
                    Message =
                        $"This test of {Wording.List(skip.Variables)} skips the sleep on passes that do no work: the CPU goes round at full current until {Wording.List(skip.Handlers)} {Wording.Number(skip.Handlers.Length, "comes", "come")}. "
                        + "Sleep on those passes, too, in a mode in which the handler still comes."
                        + (point is null ? "" : Wording.Doubt(certainty, point)),
                    Range = skip.Test,
                    Function = skip.Function,
                    Related = [new RelatedLocation(loop.Range, "the endless loop")],
                    Point = point?.Point,
                }
            );
        }
    }
}
