using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>
/// Puts mends into the words of the source. Where the source leaves no sure place for one, or its headers have no name for a
/// register, there is no fix: the message still says what to do.
/// </summary>
internal sealed class FixWriter(Image image, AnalysisResult result, SourceTexts sources)
{
    private readonly StatementPlaces _places = new(image, sources);
    private readonly SourceInsertion _insertion = new(sources);
    private readonly Dictionary<TranslationUnit, WriteSpelling> _spellings = [];

    private StatementChanges Changes => field ??= new(_places, _insertion, sources, NamesFor, SpellingFor);

    /// <summary>The fix, or null.</summary>
    public Fix? Write(Mend mend) =>
        Edits(mend) is { Count: > 0 } edits && edits.All(IsOwn)
            ? new Fix(
                mend.Description,
                mend.IsSafe,
                mend.Because,
                [
                    .. edits
                        .Distinct()
                        .OrderBy(edit => edit.Range.File.Path, StringComparer.Ordinal)
                        .ThenBy(edit => edit.Range.Start.Line)
                        .ThenBy(edit => edit.Range.Start.Column),
                ]
            )
            : null;

    /// <summary>A fix that takes a comment out, with its line where it stands alone.</summary>
    public Fix? Without(SourceRange comment, string description)
    {
        var path = comment.File.Path;
        var (first, last) = (sources.Line(path, comment.Start.Line), sources.Line(path, comment.End.Line));
        var before = first[..Math.Min(comment.Start.Column - 1, first.Length)];
        var behind = last[Math.Min(comment.End.Column - 1, last.Length)..];
        var isAlone = before.Trim().Length == 0 && behind.Trim().Length == 0;
        var start =
            isAlone ? 1
            : behind.Trim().Length == 0 ? before.TrimEnd().Length + 1
            : comment.Start.Column;
        var end = isAlone ? comment.End with { Line = comment.End.Line + 1, Column = 1 } : comment.End;
        var edit = new SourceEdit(new SourceRange(comment.Start with { Column = start }, end), "");
        return IsOwn(edit) ? new Fix(description, IsSafe: true, "A comment changes nothing.", [edit]) : null;
    }

    private static bool IsOwn(SourceEdit edit) => edit.Range.Line > 0 && !edit.Range.File.IsSystem;

    private List<SourceEdit>? Edits(Mend mend)
    {
        if (mend.Key is { } key)
        {
            return Changes.WithKey(mend, key) is { } edit ? [edit] : null;
        }

        // The statement writes the register already: another value in it needs no other unlock.
        if (Changes.Renamed(mend) is { } renamed)
        {
            return [renamed];
        }

        if (!CanBeWritten([.. mend.Writes, .. mend.Restore], mend))
        {
            return null;
        }

        if (Changes.TakenOut(mend) is { } takenOut)
        {
            return [takenOut];
        }

        return mend.Place switch
        {
            MendPlace.BeforeRest => AroundRest(mend),
            MendPlace.BeforeCause => BeforeCause(mend),
            MendPlace.AfterCause when LastWord(mend) is var (isSure, cause) => !isSure ? null
            : cause.IsReset ? AtStart(mend)
            : AfterCause(mend, cause),
            _ => AtStart(mend),
        };
    }

    // A write to a locked register needs its unlock, in time; one behind a closed gate is lost.
    private bool CanBeWritten(IReadOnlyCollection<FieldCondition> writes, Mend mend) =>
        writes.All(TakesValue)
        && writes
            .Select(write => write.Field)
            .All(field =>
                field.Register.IsAddressable
                && result
                    .Device.Protections.Where(protection =>
                        protection.Protects.Any(bits =>
                            bits.Register == field.Register && (bits.Mask & field.Mask) != 0
                        )
                    )
                    .All(protection => IsOpen(protection, field, mend))
                && GatesBefore(field)
                    .All(gate => mend.Points.All(point => point.SteadyState.Evaluate(gate.Open) == Tristate.Yes))
            );

    // Bits that ones set, to start a task say, are cleared by another register, and the reverse; one that reads zero is zero.
    private static bool TakesValue(FieldCondition write)
    {
        var (register, mask) = (write.Field.Register, write.Field.Mask);
        var value = write.Values[0] << write.Field.LowBit;
        return (mask & ~value & (register.WriteOneToSet | register.ReadsZero)) == 0
            && (value & register.WriteOneToClear) == 0;
    }

    // A lock that stays open is so right behind a write that has passed it.
    private bool IsOpen(ChangeProtection protection, FieldReference field, Mend mend) =>
        (protection.Kind, mend.Place) switch
        {
            (ProtectionKind.UnlockLater, _) => mend.Points.All(point =>
                point.SteadyState.Evaluate(protection.Open) == Tristate.Yes
            ),
            (ProtectionKind.UnlockCondition, MendPlace.AfterCause) => LastWord(mend)
                is (IsSure: true, Cause: { IsReset: false } cause)
                && mend.Points.All(point =>
                    point.SteadyState.DecisionsOf(field) is { IsEmpty: false } decisions
                    && decisions.All(decision => decision.Range == cause.Range)
                )
                && OwnPlace(cause) == cause.Range
                && _places.Of(cause.Range) is { } place
                && _places.OutOfLoops(place) == place,
            _ => false,
        };

    private IEnumerable<ClockGate> GatesBefore(FieldReference field) =>
        result.Device.Gates.Where(gate => gate.LosesWrites && gate.Registers.Contains(field.Register));

    private static bool IsOpenAtReset(ClockGate gate) =>
        gate.Open.Alternatives.Any(alternative =>
            alternative.All(part =>
                part.Values.Contains((part.Field.Register.Reset & part.Field.Mask) >> part.Field.LowBit)
            )
        );

    private List<SourceEdit>? AroundRest(Mend mend)
    {
        var edits = new List<SourceEdit>();
        foreach (var point in mend.Points.DistinctBy(point => point.Range))
        {
            if (
                _places.Of(point.Range) is not { } place
                || place.Statement is Loop
                || Statements(mend.Writes, point.Range) is not { } off
                || Statements(mend.Restore, point.Range) is not { } on
                || _insertion.Before(BeforeItsPreparation(place, point), off) is not { } before
            )
            {
                return null;
            }

            edits.Add(before);
            if (on.Count == 0)
            {
                continue;
            }

            if (_insertion.After(place.Statement, on) is not { } after)
            {
                return null;
            }

            edits.Add(after);
        }

        return edits;
    }

    // Between what lets interrupts in, or opens a timed window, and the sleep instruction nothing may stand.
    private Statement BeforeItsPreparation(StatementPlace place, RestingPoint point)
    {
        var timed = result
            .Device.Protections.Where(protection => protection.WindowCycles > 0)
            .SelectMany(protection => protection.Protects)
            .SelectMany(field => point.State.DecisionsOf(field))
            .Select(decision => decision.Range)
            .ToArray();
        var index = place.Index;
        while (index > 0 && IsPreparation(place.Block.Statements[index - 1], timed))
        {
            index--;
        }

        return place.Block.Statements[index];
    }

    private bool IsPreparation(Statement statement, SourceRange[] timed) =>
        timed.Any(range => StatementPlaces.Holds(statement.Range, range))
        || (
            !sources.Text(statement.Range).Contains('{', StringComparison.Ordinal)
            && StatementPlaces.Within(statement).Any(IsInstruction)
        );

    private bool IsInstruction(Statement statement) =>
        statement is InlineAssembly
        || (
            statement is ExpressionStatement { Expression: Call { Callee: AddressOfFunction { Function: var callee } } }
            && image.Resolve(callee) is { Body.Statements: { Count: > 0 } body }
            && body.All(inner => inner is InlineAssembly)
        );

    private List<SourceEdit>? BeforeCause(Mend mend)
    {
        // Between an unlock and its write there is time for a constant, but not for what is worked out first.
        if (
            _places.Of(mend.Cause.Range) is not { } place
            || (
                mend.IsTimed
                && place.Statement
                    is not ExpressionStatement { Expression: Assignment { Operator: null, Value: IntegerConstant } }
            )
            || Statements(mend.Writes, mend.Cause.Range) is not { } lines
            || Given(mend) is not { } given
            || Statements(mend.Restore, mend.Cause.Range) is not { } back
            || _insertion.Before(place.Statement, [.. lines, .. given]) is not { } before
        )
        {
            return null;
        }

        if (back.Count == 0)
        {
            return [before];
        }

        return _insertion.After(place.Statement, back) is { } after ? [before, after] : null;
    }

    private IReadOnlyList<string>? Given(Mend mend) =>
        mend.Code is not { } code ? []
        : SpellingFor(mend.Cause.Range.File.Path)?.Given(code) is { } given ? [given]
        : mend.Meaning.IsEmpty ? null
        : Statements(mend.Meaning, mend.Cause.Range);

    // What is written must not be written over: it goes behind the last write to its bits. Where several statements may have had
    // the last word on one bit, no place is behind them all for sure.
    private static (bool IsSure, Cause Cause) LastWord(Mend mend)
    {
        var writers = mend
            .Writes.SelectMany(write => Bits(write.Field))
            .Select(bit => mend.Points.SelectMany(point => point.SteadyState.DecisionsOf(bit)).Distinct().ToArray())
            .ToArray();
        var last = writers.SelectMany(decisions => decisions).MaxBy(decision => decision.Ordinal);
        return (
            writers.All(decisions => decisions.Select(decision => decision.Range).Distinct().Take(2).Count() < 2),
            last is null ? mend.Cause : Cause.Of(last)
        );
    }

    private static IEnumerable<FieldReference> Bits(FieldReference field) =>
        Enumerable
            .Range(field.LowBit, field.WidthBits)
            .Select(bit => new FieldReference(field.Register, bit, 1, field.Name));

    private List<SourceEdit>? AfterCause(Mend mend, Cause cause)
    {
        var range = OwnPlace(cause);
        // Behind a call that goes to sleep itself it is too late.
        if (range != cause.Range && mend.Points.SelectMany(point => point.Calls).Any(call => call.Range == range))
        {
            return null;
        }

        if (_places.Of(range) is not { } found || _places.OutOfLoops(found) is not { } place)
        {
            return null;
        }

        // Written behind a statement in a branch, it mends that branch alone.
        if (mend.IsForEveryWay && StatementPlaces.IsInBranch(place))
        {
            return null;
        }

        return Statements(mend.Writes, range) is { } lines && _insertion.After(place.Statement, lines) is { } edit
            ? [edit]
            : null;
    }

    // A function that is told what to write to serves others, too: its caller is the one to go on from.
    private SourceRange OwnPlace(Cause cause)
    {
        var (range, function, calls) = (cause.Range, cause.Function, cause.Calls);
        while (!calls.IsEmpty && HasParameters(function))
        {
            (range, function) = (calls[^1].Range, calls[^1].Caller);
            calls = calls.RemoveAt(calls.Length - 1);
        }

        return range;
    }

    private bool HasParameters(string function) =>
        image
            .Units.SelectMany(unit => unit.Functions)
            .Any(f => string.Equals(f.DisplayName, function, StringComparison.Ordinal) && f.Parameters.Count > 0);

    // A write behind a gate that the program must open first goes behind what opens it.
    private List<SourceEdit>? AtStart(Mend mend)
    {
        var openings = mend
            .Writes.SelectMany(write => GatesBefore(write.Field))
            .Distinct()
            .Where(gate => !IsOpenAtReset(gate))
            .SelectMany(gate => mend.Points.SelectMany(point => point.SteadyState.DecisionsOf(gate.Open)))
            .ToArray();
        return openings.MaxBy(opening => opening.Ordinal) is { } last
            ? AfterCause(mend with { IsForEveryWay = true }, Cause.Of(last))
            : AtFirstStatement(mend);
    }

    private List<SourceEdit>? AtFirstStatement(Mend mend) =>
        _places.FirstOf(image.Entry) is { } place
        && Statements(mend.Writes, place.Statement.Range) is { } lines
        && _insertion.Before(place.Statement, lines) is { } edit
            ? [edit]
            : null;

    private IReadOnlyList<string>? Statements(ImmutableArray<FieldCondition> writes, SourceRange range) =>
        SpellingFor(range.File.Path)?.Statements(writes);

    private WriteSpelling? SpellingFor(string path)
    {
        if (UnitOf(path) is not { } unit || NamesFor(path) is not { } names)
        {
            return null;
        }

        if (!_spellings.TryGetValue(unit, out var spelling))
        {
            spelling = new WriteSpelling(names);
            _spellings.Add(unit, spelling);
        }

        return spelling;
    }

    private readonly Dictionary<TranslationUnit, VisibleNames> _names = [];

    private VisibleNames? NamesFor(string path)
    {
        if (UnitOf(path) is not { } unit)
        {
            return null;
        }

        if (!_names.TryGetValue(unit, out var names))
        {
            names = new VisibleNames(unit, sources);
            _names.Add(unit, names);
        }

        return names;
    }

    private TranslationUnit? UnitOf(string path) =>
        image.Units.FirstOrDefault(unit => string.Equals(unit.Source.Path, path, StringComparison.Ordinal))
        ?? image.Units.FirstOrDefault(unit => unit.Included.Contains(path, StringComparer.Ordinal));
}
