using System.Collections.Immutable;
using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>The result, with the questions that the events answer.</summary>
internal sealed class RunResult(EventLog events) : AnalysisResult
{
    public override bool Reads(FieldReference field) =>
        (events.ReadMasks.GetValueOrDefault(field.Register) & field.Mask) != 0;

    public override bool Uses(Peripheral peripheral) => peripheral.Registers.Any(events.Touched.Contains);

    public override IEnumerable<SourceRange> ChangesOf(FieldReference field) =>
        events
            .Changes.Where(change =>
                change.Key.Register == field.Register && !change.Key.IsStartUp && (change.Value & field.Mask) != 0
            )
            .Select(change => change.Key.Range)
            .Distinct();

    public override bool Clears(FieldReference flag, Peripheral? peripheral) =>
        events.FlagClears.Any(clear =>
            clear.Register == flag.Register
            && (clear.Mask & flag.Mask) != 0
            && clear.Moment.Context != RunContext.StartUp
        )
        || peripheral?.Registers.Any(register =>
            register.Kind == RegisterKind.Data && events.Touched.Contains(register)
        ) == true;

    public override Tristate EverHeld(Condition condition) =>
        events.Latched.TryGetValue(condition, out var latched) ? latched.Held : Tristate.No;

    public override ImmutableArray<Decision> DecisionsEverHeld(Condition condition) =>
        events.Latched.TryGetValue(condition, out var latched)
            ? [.. latched.Decisions.OrderBy(decision => decision.Ordinal)]
            : [];
}
