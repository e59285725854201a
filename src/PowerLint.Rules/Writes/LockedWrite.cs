using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>A write to a change-protected register with no unlock in force.</summary>
internal sealed class LockedWrite : IRule
{
    /// <inheritdoc/>
    public void Check(RuleContext context)
    {
        var lost = context
            .Result.LostWrites.Where(write => write.Reason == LostWriteReason.Locked && write.Certainty != Tristate.No)
            .GroupBy(write => (write.Register.Name, Cause.Of(write.Decision)))
            .Select(same => same.OrderBy(write => write.Certainty == Tristate.Yes ? 0 : 1).First());
        foreach (var write in lost)
        {
            var certainty = write.Certainty == Tristate.Yes ? Certainty.Proven : Certainty.Possible;
            context.Report(
                new Finding
                {
                    RuleId = context.Rule.Id,
                    Level = context.LevelOf(certainty),
                    Certainty = certainty,
                    Subjects = [write.Register.Name],
                    Message = Message(write, certainty),
                    Range = write.Decision.Range,
                    Function = write.Decision.Function,
                    Related = [.. Cause.Of(write.Decision).RelatedCalls()],
                    Flow = [write.Decision],
                    Mend = certainty == Certainty.Proven ? Unlocking.Of(context, write) : null,
                }
            );
        }

        CheckWaiting(context);
    }

    // What waits for a lock to open has no effect where the CPU never rests with it open.
    private static void CheckWaiting(RuleContext context)
    {
        var locks = context
            .Device.Protections.Where(protection => protection.Kind == ProtectionKind.UnlockLater)
            .GroupBy(protection => protection.Open.ToString(), StringComparer.Ordinal);
        foreach (var same in locks)
        {
            var open = same.First().Open;
            if (context.Rests.Count == 0 || context.Rests.Any(point => point.State.Evaluate(open) != Tristate.No))
            {
                continue;
            }

            var waiting = same.SelectMany(protection => protection.Protects)
                .Select(field =>
                    (
                        field.Register,
                        Decisions: context
                            .Rests.SelectMany(point => point.State.DecisionsOf(field))
                            .Distinct()
                            .ToArray()
                    )
                )
                .Where(write => write.Decisions.Length > 0)
                .ToArray();
            if (waiting.Length > 0)
            {
                context.Report(Waiting(context, same.First(), waiting));
            }
        }
    }

    private static Finding Waiting(
        RuleContext context,
        ChangeProtection protection,
        (Register Register, Decision[] Decisions)[] waiting
    )
    {
        var certainty = context.Rests.Any(point => point.IsTainted) ? Certainty.Possible : Certainty.Proven;
        var registers = waiting
            .Select(write => write.Register.Name)
            .Distinct(StringComparer.Ordinal)
            .Order(SubjectOrder.Instance)
            .ToArray();
        var decisions = waiting
            .SelectMany(write => write.Decisions)
            .Distinct()
            .OrderBy(decision => decision.Ordinal)
            .ToArray();
        return new Finding
        {
            RuleId = context.Rule.Id,
            Level = context.LevelOf(certainty),
            Certainty = certainty,
            Subjects = [.. registers],
            Message =
                $"What is written to {Wording.List(registers)} waits for a lock that the program never opens: it has no effect at any point where the CPU rests. "
                + (
                    protection.UnlockCode is { Length: > 0 } code
                        ? $"Open it once all is set: {code}"
                        : $"Let this hold once all is set: {protection.Open}."
                )
                + Wording.Doubt(certainty, context.Rests[0]),
            Range = decisions[0].Range,
            Function = decisions[0].Function,
            Related = [.. Cause.Of(decisions[0]).RelatedCalls()],
            Flow = [.. decisions],
            Mend = certainty == Certainty.Proven ? Unlocking.Of(protection, decisions, context.Rests) : null,
        };
    }

    private static string Message(LostWrite write, Certainty certainty)
    {
        var protection = write.Protection;
        if (protection is { WrongKeyResets: true })
        {
            return $"{write.Register.Name} takes a write only with its key, and {(certainty == Certainty.Proven ? "this one" : "on some paths this one")} comes without: it resets the part. "
                + (
                    protection.UnlockCode is { Length: > 0 } right
                        ? $"Write the key in the same word: {right}"
                        : "Write the key in the same word."
                );
        }

        return $"{write.Register.Name} is protected{(protection is null || write.Register.Name.StartsWith(protection.Name, StringComparison.Ordinal) || protection.Name.StartsWith(write.Register.Name, StringComparison.Ordinal) ? "" : $" by {protection.Name}")} and no unlock is in force here: "
            + $"{(certainty == Certainty.Proven ? "this write" : "on some paths this write")} changes none of its protected bits. "
            + (
                protection switch
                {
                    { UnlockCode: { Length: > 0 } code } => $"Unlock it right before: {code}",
                    { Kind: ProtectionKind.UnlockCondition } => $"Let this hold first: {protection.Open}.",
                    _ => "Unlock it right before, with interrupts off, in the order and time that the datasheet gives.",
                }
            );
    }
}
