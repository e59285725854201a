using System.Collections.Immutable;
using System.Globalization;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>An output that works against a level which the board gives the pin: a driver, or an external pull.</summary>
internal sealed class OutputAgainstLevel : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var pin in context.Device.Pins)
        {
            var board = context.Board.Pins.GetValueOrDefault(pin.Name);
            // A line with a driver of either level may be one that both sides drive in turn, which is no contradiction.
            if (board is null or { Driven: null, Pull: null } or { Driven: WireLevel.Either })
            {
                continue;
            }

            var observations = context
                .Rests.Select(point => Observe(context, point, pin, board))
                .OfType<Observation>()
                .ToArray();
            if (observations.Length == 0 && context.Rests.Count > 0)
            {
                context.Clean(pin.Name);
            }

            context.Report(
                observations,
                group => Message(pin, board, group),
                group => MendOf(context, pin, board, group)
            );
        }
    }

    private static Observation? Observe(RuleContext context, PointFacts point, Pin pin, BoardPin board)
    {
        var high = point.State.Evaluate(pin.OutputHigh);
        var against = (board.Driven ?? board.Pull) switch
        {
            WireLevel.Low => high,
            _ => high.Not(),
        };
        if (point.CertaintyOf(point.State.Evaluate(pin.Output).And(against)) is not { } certainty)
        {
            return null;
        }

        var decisions = point
            .State.DecisionsOf(pin.Output)
            .Concat(point.State.DecisionsOf(pin.OutputHigh))
            .Distinct()
            .OrderBy(decision => decision.Ordinal)
            .ToImmutableArray();
        var level = context.LevelOf(certainty);
        return new Observation
        {
            Group = pin.Name,
            Subject = pin.Name,
            Certainty = certainty,
            // Two drivers on one wire draw what they can, and no sleep makes up for that.
            Level = board.Driven is not null && level == Level.Warning ? Level.Error : level,
            Cause = Cause.LastOf(EnablingStatement.Enabling(point.State, pin.Output), context.Result),
            Point = point,
            Flow = decisions,
            Pin = pin,
        };
    }

    private static Mend? MendOf(RuleContext context, Pin pin, BoardPin board, ObservationGroup group)
    {
        // What the board drives is an input. Beside a pull the program may well want to drive, at other times.
        if (board.Driven is null || Opposites.Of(group.First.Point.State, pin.Output, _ => true) is not { } writes)
        {
            return null;
        }

        var after = new StateAfter(group.First.Point.State, writes);
        if (after.Evaluate(pin.PullUp).Or(after.Evaluate(pin.PullDown)) != Tristate.No)
        {
            return null;
        }

        return new Mend
        {
            Description = $"Make {pin.Name} an input",
            Writes = writes,
            Place = MendPlace.AfterCause,
            Cause = group.First.Cause,
            Points = [.. group.Points.Select(point => point.Point)],
            Undoes =
            [
                .. group
                    .Points.SelectMany(point => writes.SelectMany(write => point.State.DecisionsOf(write.Field)))
                    .Distinct(),
            ],
            Because =
                "The program may mean another pin, or the board file a former board: look at the schematic first.",
        };
    }

    private static string Message(Pin pin, BoardPin board, ObservationGroup group)
    {
        var first = group.First;
        var level = first.Point.State.Evaluate(pin.OutputHigh) switch
        {
            Tristate.Yes => " high",
            Tristate.No => " low",
            _ => "",
        };
        var outside = (board.Driven, board.Pull) switch
        {
            (WireLevel.High, _) => "the board drives it high",
            (WireLevel.Low, _) => "the board drives it low",
            (_, WireLevel.High) => $"the board pulls it up{Ohms(board)}",
            _ => $"the board pulls it down{Ohms(board)}",
        };
        var registers = Wording.Registers(first.Point.State, pin.Output.Fields.Concat(pin.OutputHigh.Fields));
        return $"{pin.Name} is an output and drives{level} {Wording.Where(first.Point)} ({registers}), but by the board file {outside}: "
            + (
                board.Driven is null
                    ? "supply over resistance flows all the time. Rest at the level of the pull."
                    : "two outputs work against each other with all the current that they can give. Make the pin an input, or mend the board file."
            )
            + Wording.Doubt(first.Certainty, first.Point);
    }

    private static string Ohms(BoardPin board) =>
        board.PullOhms is { } ohms ? string.Create(CultureInfo.InvariantCulture, $" with {ohms:0.###} Ω") : "";
}
