using PowerLint.Analysis;

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
                }
            );
        }
    }

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
