using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>Writes to a peripheral whose clock gate is closed, where they are lost.</summary>
internal sealed class GatedWrite : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        foreach (var run in Runs(context.Result.LostWrites.Where(IsGated)))
        {
            var first = run[0];
            var certainty = run.All(write => write.Certainty == Tristate.Yes) ? Certainty.Proven : Certainty.Possible;
            var registers = run.Select(write => write.Register.Name)
                .Distinct(StringComparer.Ordinal)
                .Order(SubjectOrder.Instance)
                .ToArray();
            context.Report(
                new Finding
                {
                    RuleId = context.Rule.Id,
                    Level = context.LevelOf(certainty),
                    Certainty = certainty,
                    Subjects = [.. registers],
                    Message =
                        $"{Wording.List(registers)} {Wording.Number(registers.Length, "is", "are")} written while the clock gate {first.Gate?.Name} is closed: the {Wording.Number(run.Count, "write is", "writes are")} lost"
                        + $"{(certainty == Certainty.Proven ? "" : " on some paths")}. Open the gate first.",
                    Range = first.Decision.Range,
                    Function = first.Decision.Function,
                    Related = [.. Cause.Of(first.Decision).RelatedCalls()],
                    Flow = [.. run.Select(write => write.Decision)],
                    Mend = certainty == Certainty.Proven ? MendOf(context, run) : null,
                }
            );
        }
    }

    // What the program itself closes stays closed but for the write: it goes to sleep on that.
    private static Mend? MendOf(RuleContext context, List<LostWrite> run)
    {
        var gate = run[0].Gate!;
        if (
            gate.Open.Alternatives is not [var open, ..]
            || open.Any(part => part.Field.Register.Kind != RegisterKind.Configuration)
            || open.Any(part =>
                context.Device.Gates.Any(g => g.LosesWrites && g.Registers.Contains(part.Field.Register))
            )
        )
        {
            return null;
        }

        var isClosedByProgram = open.All(part =>
            part.Values.Contains((part.Field.Register.Reset & part.Field.Mask) >> part.Field.LowBit)
        );
        if (isClosedByProgram && (run.Count > 1 || open is not [{ Field.WidthBits: 1 }]))
        {
            return null;
        }

        var reachesPins = run.Any(write => DecidesOnPins(context.Device, write.Register));
        var keepsDebugging = context
            .Device.Sleep.DebugInSleep.SelectMany(entry => entry.When.Fields)
            .Any(field => run.Exists(write => write.Register == field.Register));
        return new Mend
        {
            Description = isClosedByProgram
                ? $"Open the gate {gate.Name} for the write"
                : $"Open the gate {gate.Name} right before the {Wording.Number(run.Count, "write", "writes")}",
            Writes = [.. open.Select(part => part with { Values = [part.Values[0]] })],
            Restore = isClosedByProgram ? [open[0] with { Values = [1 - open[0].Values[0]] }] : [],
            Place = MendPlace.BeforeCause,
            Cause = Cause.Of(run[0].Decision),
            // What was lost until now takes effect: that is more than a saving.
            IsSafe = false,
            Because =
                isClosedByProgram
                    ? "The program closed the gate before: perhaps the two statements should change places."
                : keepsDebugging
                    ? "What is written keeps clocks running for a debugger then: perhaps it should go instead."
                : reachesPins
                    ? "What is written takes effect on pins then, perhaps for the first time: look at what the board has there."
                : "What is written takes effect then, perhaps for the first time: look at what it starts.",
        };
    }

    private static bool DecidesOnPins(DeviceModel device, Register register) =>
        device.Pins.Any(pin =>
            pin.Functions.Select(function => function.When)
                .Concat([pin.Output, pin.OutputHigh, pin.PullUp, pin.PullDown, pin.InputBufferOff])
                .Any(condition => condition.Fields.Any(field => field.Register == register))
        );

    private static bool IsGated(LostWrite write) =>
        write.Reason == LostWriteReason.Gated && write.Certainty != Tristate.No;

    // Consecutive lost writes behind one gate, in one function, make one finding.
    private static IEnumerable<List<LostWrite>> Runs(IEnumerable<LostWrite> writes)
    {
        List<LostWrite>? run = null;
        foreach (var write in writes.OrderBy(write => write.Decision.Ordinal))
        {
            if (
                run is not null
                && ReferenceEquals(run[^1].Gate, write.Gate)
                && string.Equals(run[^1].Decision.Function, write.Decision.Function, StringComparison.Ordinal)
            )
            {
                run.Add(write);
                continue;
            }

            if (run is not null)
            {
                yield return run;
            }

            run = [write];
        }

        if (run is not null)
        {
            yield return run;
        }
    }
}
