using System.Collections.Immutable;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>The calls that are active, innermost last. Interned: equal chains are the same object.</summary>
internal sealed class CallChain
{
    // Of each call, by the function called: all but calls through pointers have one.
    private readonly Dictionary<Expression, List<CallChain>> _longer = [];

    private CallChain(CallChain? outer, Expression? call, Function function, string? handler)
    {
        Outer = outer;
        Call = call;
        Function = function;
        Handler = handler;
    }

    public CallChain? Outer { get; }

    /// <summary>The call expression in the outer function; null for an entry.</summary>
    public Expression? Call { get; }

    public Function Function { get; }

    /// <summary>What is remembered of calls by this chain.</summary>
    public List<CallMemory> Memories { get; } = [];

    /// <summary>The handler that it all runs in, as spelled; null for the main program.</summary>
    public string? Handler { get; }

    public static CallChain Enter(Function function, string? handler) => new(null, null, function, handler);

    public CallChain Into(Expression call, Function function, ChainCount count)
    {
        // A tree of calls that doubles at each level has more chains than memory: later ones are told from others by their
        // last call only.
        var outer = count.IsFull && Outer is not null ? Root : this;
        if (!outer._longer.TryGetValue(call, out var known))
        {
            known = [];
            outer._longer.Add(call, known);
        }

        foreach (var longer in known)
        {
            if (longer.Function == function)
            {
                return longer;
            }
        }

        var chain = new CallChain(outer, call, function, Handler);
        known.Add(chain);
        count.Chains++;
        return chain;
    }

    private CallChain Root
    {
        get
        {
            var root = this;
            while (root.Outer is not null)
            {
                root = root.Outer;
            }

            return root;
        }
    }

    public int CountOf(Function function)
    {
        var count = 0;
        for (var chain = this; chain is not null; chain = chain.Outer)
        {
            count += chain.Function == function ? 1 : 0;
        }

        return count;
    }

    public ImmutableArray<CallSite> Sites()
    {
        var sites = new List<CallSite>();
        for (var chain = this; chain.Outer is not null; chain = chain.Outer)
        {
            sites.Add(new CallSite(chain.Call!.Range, chain.Outer.Function.DisplayName, chain.Function.DisplayName));
        }

        sites.Reverse();
        return [.. sites];
    }

    /// <summary>The innermost place in the user's own source, and the function that holds it: headers' inline functions are seen through.</summary>
    public (SourceRange Range, Function Function, CallChain Chain) UserPlace(SourceRange range)
    {
        var chain = this;
        while (range.File.IsSystem && chain.Outer is not null)
        {
            range = chain.Call!.Range;
            chain = chain.Outer;
        }

        return (range, chain.Function, chain);
    }
}

/// <summary>How many call chains there are.</summary>
internal sealed class ChainCount
{
    private const int Maximum = 100_000;

    public int Chains { get; set; }

    public bool IsFull => Chains >= Maximum;
}
