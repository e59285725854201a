using System.Collections.Immutable;

namespace PowerLint.Analysis;

/// <summary>The writes that may have decided a bit. Interned: equal sets are the same object.</summary>
internal sealed class DecisionSet(int id, ImmutableArray<Decision> decisions)
{
    /// <summary>Only reset decided the bit.</summary>
    public static DecisionSet Reset { get; } = new(0, []);

    public int Id { get; } = id;

    /// <summary>The writes, by ordinal.</summary>
    public ImmutableArray<Decision> Decisions { get; } = decisions;

    /// <summary>Whether reset is one of the possible deciders, too.</summary>
    public bool IncludesReset { get; init; }
}

/// <summary>Makes and interns decisions and sets of them.</summary>
internal sealed class DecisionLog
{
    // One place in a loop over pins decides each with another value; past this many the values are no longer told apart.
    private const int MaximumVariants = 24;
    private const int MaximumSetSize = 24;

    private readonly Dictionary<
        (object Node, CallChain? Chain, ulong Address, KnownBits Before, KnownBits After),
        Decision
    > _decisions = [];
    private readonly Dictionary<(object Node, CallChain? Chain, ulong Address), int> _variants = [];
    private readonly Dictionary<string, DecisionSet> _sets = new(StringComparer.Ordinal);
    private readonly Dictionary<Decision, DecisionSet> _singles = [];
    private readonly Dictionary<(int, int), DecisionSet> _unions = [];
    private int _nextOrdinal = 1;
    private int _nextSet = 1;

    public Decision Decide(
        object node,
        CallChain? chain,
        ulong address,
        KnownBits before,
        KnownBits after,
        Func<int, KnownBits, KnownBits, Decision> make
    )
    {
        var key = (node, chain, address, before, after);
        if (_decisions.TryGetValue(key, out var decision))
        {
            return decision;
        }

        var place = (node, chain, address);
        var variants = _variants.GetValueOrDefault(place);
        if (variants >= MaximumVariants)
        {
            key = (node, chain, address, KnownBits.Unknown, KnownBits.Unknown);
            if (_decisions.TryGetValue(key, out decision))
            {
                return decision;
            }
        }

        _variants[place] = variants + 1;
        decision = make(_nextOrdinal++, key.Item4, key.Item5);
        _decisions.Add(key, decision);
        return decision;
    }

    public DecisionSet Single(Decision decision)
    {
        if (!_singles.TryGetValue(decision, out var set))
        {
            set = Intern([decision], includesReset: false);
            _singles.Add(decision, set);
        }

        return set;
    }

    public DecisionSet Union(DecisionSet a, DecisionSet b)
    {
        if (ReferenceEquals(a, b))
        {
            return a;
        }

        var key = a.Id < b.Id ? (a.Id, b.Id) : (b.Id, a.Id);
        if (!_unions.TryGetValue(key, out var union))
        {
            union = Intern(
                [.. a.Decisions.Concat(b.Decisions).Distinct().OrderBy(d => d.Ordinal).Take(MaximumSetSize)],
                a.Id == 0 || b.Id == 0 || a.IncludesReset || b.IncludesReset
            );
            _unions.Add(key, union);
        }

        return union;
    }

    public bool IsIncluded(DecisionSet a, DecisionSet b) => ReferenceEquals(a, b) || ReferenceEquals(Union(a, b), b);

    private DecisionSet Intern(ImmutableArray<Decision> decisions, bool includesReset)
    {
        var text = string.Join(',', decisions.Select(d => d.Ordinal)) + (includesReset ? "r" : "");
        if (!_sets.TryGetValue(text, out var set))
        {
            set = new DecisionSet(_nextSet++, decisions) { IncludesReset = includesReset };
            _sets.Add(text, set);
        }

        return set;
    }
}
