namespace PowerLint.Rules;

/// <summary>What a rule's page says of it.</summary>
/// <param name="create">Makes the rule.</param>
public sealed class RuleDescriptor(Func<IRule> create)
{
    /// <summary>The identifier: <c>floating-pin</c>. Stable for ever once released.</summary>
    public required string Id { get; init; }

    /// <summary>A few words: <c>Digital input without a level</c>.</summary>
    public required string Title { get; init; }

    /// <summary>One sentence.</summary>
    public required string Summary { get; init; }

    /// <summary>The level of a proven finding; board-dependent and possible ones are notes.</summary>
    public required Level DefaultLevel { get; init; }

    /// <summary>The group: <c>pins</c>, <c>clocks</c>, <c>writes</c>, <c>waiting</c>, <c>sleep</c>, <c>suppressions</c>.</summary>
    public required string Group { get; init; }

    /// <summary>The release that brought it.</summary>
    public required string Since { get; init; }

    /// <summary>The section of a device model that it cannot do without (<c>regulators</c>); empty where there is none.</summary>
    public string Needs { get; init; } = "";

    /// <summary>The page's text in Markdown, without front matter.</summary>
    public required string Page { get; init; }

    /// <summary>Makes the rule.</summary>
    public IRule Create() => create();

    /// <inheritdoc/>
    public override string ToString() => Id;
}
