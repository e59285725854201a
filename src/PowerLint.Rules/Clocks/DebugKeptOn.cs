using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A debug setting that keeps clocks running in the sleep mode in use.</summary>
internal sealed class DebugKeptOn : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        var settings = context
            .Device.Sleep.DebugInSleep.Where(setting => setting.When.Fields.Any())
            .GroupBy(setting => setting.When.Fields.First().Register)
            .ToArray();
        foreach (var register in settings)
        {
            var matters = context.Points.Where(point => point.Sleeps).ToArray();
            var observations = matters
                .SelectMany(point => register.Select(setting => Observe(context, setting, point)))
                .OfType<Observation>()
                .ToArray();
            if (observations.Length == 0 && matters.Length > 0)
            {
                context.Clean(register.Key.Name);
            }

            context.Report(observations, Message, MendOf);
        }
    }

    private static Observation? Observe(RuleContext context, ModesWhen setting, PointFacts point)
    {
        if (point.CertaintyOf(point.InMode([setting])) is not { } certainty)
        {
            return null;
        }

        var decisions = EnablingStatement.Enabling(point.State, setting.When);
        return new Observation
        {
            Group = setting.When.Fields.First().Register.Name,
            Subject = setting.When.Fields.First().Register.Name,
            Certainty = certainty,
            Level = context.LevelOf(certainty),
            Cause = Cause.LastOf(decisions, context.Result),
            Point = point,
            Flow = decisions,
            Condition = setting.When,
        };
    }

    private static Mend? MendOf(ObservationGroup group)
    {
        var writes = ImmutableArray.CreateBuilder<FieldCondition>();
        foreach (var observation in group.Observations)
        {
            if (Opposites.Of(observation.Point.State, observation.Condition!, _ => true) is not { } off)
            {
                return null;
            }

            writes.AddRange(off.Where(write => !writes.Any(other => other.Field == write.Field)));
        }

        return new Mend
        {
            Description = $"Let no debugger keep clocks running in {group.First.Point.ModeName ?? "sleep"}",
            Writes = writes.ToImmutable(),
            Place = MendPlace.AfterCause,
            Cause = group.First.Cause,
            Points = [.. group.Points.Select(point => point.Point)],
            Undoes =
            [
                .. group
                    .Points.SelectMany(point => writes.SelectMany(w => point.State.DecisionsOf(w.Field)))
                    .Distinct(),
            ],
            Because = "A debugger loses its connection in sleep then: keep the setting in builds that are debugged.",
        };
    }

    private static string Message(ObservationGroup group)
    {
        var first = group.First;
        return $"Clocks keep running {Wording.Where(first.Point)} for a debugger ({first.Condition}). "
            + "Switch that off in what ships: only a debugger needs it."
            + Wording.Doubt(first.Certainty, first.Point);
    }
}
