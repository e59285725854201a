using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>The place in the source that a finding blames, and how the program got there.</summary>
/// <param name="Range">The statement.</param>
/// <param name="Function">The function that holds it.</param>
/// <param name="Calls">The calls that led there, outermost first.</param>
internal sealed record Cause(SourceRange Range, string Function, ImmutableArray<CallSite> Calls)
{
    /// <summary>The last of some writes; where there is none, only reset decided: the first statement of <c>main</c>.</summary>
    public static Cause LastOf(IEnumerable<Decision> decisions, AnalysisResult result) =>
        decisions.MaxBy(decision => decision.Ordinal) is { } last ? Of(last) : Reset(result);

    /// <summary>A write.</summary>
    public static Cause Of(Decision decision) => new(decision.Range, decision.Function, decision.Calls);

    /// <summary>What reset left as it is: the first statement of <c>main</c>.</summary>
    public static Cause Reset(AnalysisResult result) => new(result.FirstStatement, "main", []) { IsReset = true };

    /// <summary>Whether no statement is to blame, and the place only stands for the start.</summary>
    public bool IsReset { get; private init; }

    /// <summary>A resting point.</summary>
    public static Cause Of(RestingPoint point) => new(point.Range, point.Function, point.Calls);

    /// <summary>The calls as related locations, outermost first.</summary>
    public IEnumerable<RelatedLocation> RelatedCalls() =>
        Calls
            .Where(call => call.Range.Start != Range.Start || call.Range.End != Range.End)
            .Select(call => new RelatedLocation(call.Range, $"{call.Callee}() is called here"));

    /// <summary>Two ways to one statement are one cause; the calls tell them apart in related locations.</summary>
    public bool Equals(Cause? other) => other is not null && Range == other.Range;

    /// <inheritdoc/>
    public override int GetHashCode() => Range.GetHashCode();
}
