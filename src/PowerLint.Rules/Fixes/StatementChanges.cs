using System.Text.RegularExpressions;
using PowerLint.Analysis;
using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>Changes the statement that is to blame itself, where that mends it.</summary>
internal sealed partial class StatementChanges(
    StatementPlaces places,
    SourceInsertion insertion,
    SourceTexts sources,
    Func<string, VisibleNames?> namesFor,
    Func<string, WriteSpelling?> spellingFor
)
{
    /// <summary>The name of a value replaced by that of another one.</summary>
    public SourceEdit? Renamed(Mend mend)
    {
        if (
            mend.Renames is not var (field, old, @new)
            || places.Of(mend.Cause.Range) is not { Statement: var statement }
            || spellingFor(statement.Range.File.Path) is not { } spelling
            || statement.Range.Line != statement.Range.End.Line
        )
        {
            return null;
        }

        var line = sources.Line(statement.Range.File.Path, statement.Range.Line);
        var names = namesFor(statement.Range.File.Path)!;
        var words = Word()
            .Matches(line)
            .Where(word =>
                word.Index >= statement.Range.Start.Column - 1
                && word.Index + word.Length <= statement.Range.End.Column - 1
                && names.ValueOf(word.Value) == old << field.LowBit
            )
            .ToArray();
        if (words is not [var one] || spelling.Bits.Sibling(one.Value, @new << field.LowBit) is not { } sibling)
        {
            return null;
        }

        var start = statement.Range.Start with { Column = one.Index + 1 };
        return new SourceEdit(new SourceRange(start, start with { Column = one.Index + one.Length + 1 }), sibling);
    }

    /// <summary>The statement to blame taken out, where it did nothing else.</summary>
    public SourceEdit? TakenOut(Mend mend)
    {
        if (
            mend.Undoes is not [var decision]
            || places.Of(decision.Range) is not { Statement: ExpressionStatement { Expression: Assignment } statement }
        )
        {
            return null;
        }

        var (mask, wanted) = (0UL, 0UL);
        foreach (var write in mend.Writes)
        {
            var shift = 8 * (long)(write.Field.Register.Address - decision.Address);
            if (shift is < 0 or > 56)
            {
                return null;
            }

            mask |= write.Field.Mask << (int)shift;
            wanted |= (write.Values[0] << write.Field.LowBit) << (int)shift;
        }

        var width = decision.WidthBits >= 64 ? ulong.MaxValue : (1UL << decision.WidthBits) - 1;
        var known = decision.Before.Known & decision.After.Known;
        var changed = ((decision.Before.Value ^ decision.After.Value) | ~known) & width;
        return (changed & ~mask) == 0 && (decision.Before.Value & mask) == wanted ? insertion.Without(statement) : null;
    }

    /// <summary>The key put into the value that the statement writes: <c>NAME = value;</c> becomes <c>NAME = KEY | value;</c>.</summary>
    public SourceEdit? WithKey(Mend mend, string key)
    {
        if (
            places.Of(mend.Cause.Range)
                is not { Statement: ExpressionStatement { Expression: Assignment { Operator: null } } statement }
            || statement.Range.Line != statement.Range.End.Line
            || namesFor(statement.Range.File.Path)?.IsMacro(key) != true
            || AssignedValue().Match(sources.Text(statement.Range)) is not { Success: true } match
        )
        {
            return null;
        }

        var value = match.Groups["value"];
        var start = statement.Range.Start with { Column = statement.Range.Start.Column + value.Index };
        var isLoose = value.Value.AsSpan().IndexOfAny("?&,") >= 0;
        return new SourceEdit(
            new SourceRange(start, start with { Column = start.Column + value.Length }),
            isLoose ? $"{key} | ({value.Value})" : $"{key} | {value.Value}"
        );
    }

    [GeneratedRegex(@"^[^=]*[^=!<>&|^+*/%-]=\s*(?<value>[^=;\s][^=;]*?)\s*;?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex AssignedValue();

    [GeneratedRegex(@"\b[A-Za-z_]\w*", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Word();
}
