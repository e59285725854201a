using System.Collections.Immutable;
using System.Text.RegularExpressions;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>What lets a write through a lock.</summary>
internal static partial class Unlocking
{
    private const string TakesEffect =
        "The value takes effect then, perhaps for the first time: make sure that it is the right one";

    /// <summary>What opens the lock for a write that is lost behind it, or null where nothing that the program can write does.</summary>
    public static Mend? Of(RuleContext context, LostWrite write) =>
        write.Protection switch
        {
            { Kind: ProtectionKind.KeyInWord } protection => WithKey(protection, write),
            { UnlockCode: { } code, WindowCycles: > 0 } => Before(write) with
            {
                Code = code,
                IsTimed = true,
                Because = TakesEffect + ", and that interrupts are off here.",
            },
            { UnlockCode: { } code } protection => Before(write) with
            {
                Code = code,
                Meaning = protection.Kind == ProtectionKind.UnlockCondition ? Setting(protection.Open) : [],
                Writes = GatesBefore(context, protection, write),
                Because = TakesEffect + ". The lock stays open behind it.",
            },
            { Kind: ProtectionKind.UnlockCondition } protection => SwitchedOff(context, protection, write),
            _ => null,
        };

    /// <summary>What opens a lock that all that was written waits for.</summary>
    public static Mend? Of(ChangeProtection protection, Decision[] waiting, IReadOnlyList<PointFacts> rests)
    {
        var last = waiting[^1];
        var writes = Opposites.Towards(rests[0].State, protection.Open);
        return writes.IsEmpty || waiting.Any(decision => decision.Handler is not null)
            ? null
            : new Mend
            {
                Description = "Open the lock once all is set",
                Writes = writes,
                Place = MendPlace.AfterCause,
                Cause = Cause.Of(last),
                Points = [.. rests.Select(point => point.Point)],
                IsForEveryWay = true,
                Because =
                    "All that waits takes effect then, perhaps for the first time: look at what the board has on these pins.",
            };
    }

    private static Mend Before(LostWrite write) =>
        new()
        {
            Description = $"Unlock {write.Register.Name} right before the write",
            Place = MendPlace.BeforeCause,
            Cause = Cause.Of(write.Decision),
            Because = TakesEffect + ".",
        };

    // A bit is set like any other; a key may want to be written as a whole.
    private static ImmutableArray<FieldCondition> Setting(Condition open) =>
        open.Alternatives is [var parts, ..] && parts.All(part => part.Field.WidthBits == 1)
            ? [.. parts.Select(part => part with { Values = [part.Values[0]] })]
            : [];

    // FCTL1 = FWKEY | …; the key goes into a word that has nothing in its place.
    private static Mend? WithKey(ChangeProtection protection, LostWrite write)
    {
        var (register, decision) = (write.Register, write.Decision);
        return
            KeyName().Match(protection.UnlockCode ?? "") is { Success: true } match
            && protection.KeyRegister == register
            && decision.Address == register.Address
            && decision.WidthBits == register.WidthBits
            && decision.After.Knows(protection.KeyMask)
            && (decision.After.Value & protection.KeyMask) == 0
            ? Before(write) with
            {
                Description = $"Write the key of {register.Name} in the same word",
                Key = match.Groups["key"].Value,
            }
            : null;
    }

    // The register with the unlock in it may itself stand behind a gate that nothing has opened by then.
    private static ImmutableArray<FieldCondition> GatesBefore(
        RuleContext context,
        ChangeProtection protection,
        LostWrite write
    ) =>
        [
            .. context
                .Device.Gates.Where(gate =>
                    gate.LosesWrites
                    && protection.Open.Fields.Any(field => gate.Registers.Contains(field.Register))
                    && !context.Rests.All(point =>
                        point.State.Evaluate(gate.Open) == Tristate.Yes
                        && point.State.DecisionsOf(gate.Open).All(decision => decision.Ordinal < write.Decision.Ordinal)
                    )
                )
                .SelectMany(gate => gate.Open.Alternatives.Take(1).SelectMany(open => open))
                .Select(part => part with { Values = [part.Values[0]] })
                .Distinct(),
        ];

    // What is locked while a peripheral is on can be written with it off.
    private static Mend? SwitchedOff(RuleContext context, ChangeProtection protection, LostWrite write)
    {
        if (
            protection.Open.Alternatives is not [[var off]]
            || off is not { Field.WidthBits: 1, Field.Register.Kind: RegisterKind.Configuration, Values: [0] }
            || context.Device.Peripherals.FirstOrDefault(peripheral => IsSwitch(peripheral, off.Field))
                is not { } peripheral
        )
        {
            return null;
        }

        return Before(write) with
        {
            Description = $"Switch {peripheral.Name} off for the write",
            Writes = [off],
            Restore = [off with { Values = [1] }],
            Because =
                TakesEffect
                + $", and wait for {peripheral.Name} where the datasheet says that switching takes time; it does not work meanwhile.",
        };
    }

    private static bool IsSwitch(Peripheral peripheral, FieldReference field) =>
        !peripheral.On.IsNever
        && peripheral.On.Alternatives.All(parts => parts.Any(part => part is { Values: [1] } && part.Field == field));

    [GeneratedRegex(@"^\w+ = (?<key>\w+) \| …;$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex KeyName();
}
