using System.Collections.Immutable;

namespace PowerLint.Rules;

/// <summary>All rules, as their pages in <c>rules/</c> describe them. The list itself is generated from the pages.</summary>
public static partial class RuleCatalog
{
    private static readonly Lazy<ImmutableDictionary<string, RuleDescriptor>> ById = new(() =>
        All.ToImmutableDictionary(rule => rule.Id, StringComparer.Ordinal)
    );

    /// <summary>All rules, by identifier.</summary>
    public static ImmutableArray<RuleDescriptor> All { get; } = Describe();

    /// <summary>The rule of that identifier, or null.</summary>
    public static RuleDescriptor? Find(string id) => ById.Value.GetValueOrDefault(id);

    private static partial ImmutableArray<RuleDescriptor> Describe();
}
