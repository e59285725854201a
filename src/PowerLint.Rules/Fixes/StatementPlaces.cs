using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>A statement that stands in braces, so that others can be put before and after it.</summary>
/// <param name="Function">The function that holds it.</param>
/// <param name="Block">The braces.</param>
/// <param name="Index">Its place among their statements.</param>
/// <param name="Loops">The loops around it, innermost first.</param>
internal sealed record StatementPlace(Function Function, Block Block, int Index, IReadOnlyList<Loop> Loops)
{
    /// <summary>The statement.</summary>
    public Statement Statement => Block.Statements[Index];
}

/// <summary>Finds the statements of an image by where they stand in the source.</summary>
internal sealed class StatementPlaces(Image image, SourceTexts sources)
{
    /// <summary>The innermost statement in braces that holds a range, or null.</summary>
    public StatementPlace? Of(SourceRange range)
    {
        StatementPlace? found = null;
        foreach (var function in image.Units.SelectMany(unit => unit.Functions))
        {
            if (Holds(function.Range, range) && Search(function, function.Body, range, []) is { } place)
            {
                found = place;
            }
        }

        return found;
    }

    /// <summary>Whether a statement stands in a branch that its function need not take.</summary>
    public static bool IsInBranch(StatementPlace place) =>
        Within(place.Function.Body)
            .Any(statement =>
                statement is If or Switch
                && statement != place.Statement
                && Holds(statement.Range, place.Statement.Range)
            );

    /// <summary>
    /// The statement in braces around a place that is not in a loop which ends: what follows it runs once all passes are done.
    /// </summary>
    public StatementPlace? OutOfLoops(StatementPlace place)
    {
        var ending = place.Loops.LastOrDefault(loop => !GoesOnForEver(loop));
        return ending is null ? place : Of(ending.Range);
    }

    /// <summary>The place of a function's first statement that is no declaration, or null.</summary>
    public StatementPlace? FirstOf(Function function)
    {
        var index = function.Body.Statements.TakeWhile(statement => statement is LocalDeclaration).Count();
        return IsBraced(function.Body) && index < function.Body.Statements.Count
            ? new StatementPlace(function, function.Body, index, [])
            : null;
    }

    /// <summary>All statements in a statement, itself first.</summary>
    public static IEnumerable<Statement> Within(Statement statement)
    {
        yield return statement;
        foreach (var inner in Children(statement).SelectMany(Within))
        {
            yield return inner;
        }
    }

    /// <summary>Whether a range lies in another one, in one file.</summary>
    public static bool Holds(SourceRange outer, SourceRange inner) =>
        string.Equals(outer.File.Path, inner.File.Path, StringComparison.Ordinal)
        && Order(outer.Start, inner.Start) <= 0
        && Order(inner.End, outer.End) <= 0;

    private static int Order(SourcePosition a, SourcePosition b) => (a.Line, a.Column).CompareTo((b.Line, b.Column));

    private StatementPlace? Search(Function function, Statement statement, SourceRange range, List<Loop> loops)
    {
        StatementPlace? found = null;
        if (statement is Block block && IsBraced(block))
        {
            var index = 0;
            foreach (var child in block.Statements)
            {
                if (Holds(child.Range, range))
                {
                    found = new StatementPlace(function, block, index, [.. Enumerable.Reverse(loops)]);
                    break;
                }

                index++;
            }
        }

        if (statement is Loop loop)
        {
            loops.Add(loop);
        }

        foreach (var child in Children(statement).Where(child => Holds(child.Range, range)))
        {
            found = Search(function, child, range, loops) ?? found;
        }

        if (statement is Loop)
        {
            loops.RemoveAt(loops.Count - 1);
        }

        return found;
    }

    private bool IsBraced(Block block) =>
        block.Range.Line > 0 && sources.Text(block.Range) is { Length: > 1 } text && text[0] == '{' && text[^1] == '}';

    private static bool GoesOnForEver(Loop loop) => loop.Condition is null or IntegerConstant { Value: not 0 };

    private static IEnumerable<Statement> Children(Statement statement) =>
        statement switch
        {
            Block block => block.Statements,
            If choice => choice.Else is null ? [choice.Then] : [choice.Then, choice.Else],
            Loop loop => [loop.Body],
            Switch choice => [choice.Body],
            CaseLabel label => [label.Labelled],
            Label label => [label.Labelled],
            _ => [],
        };
}
