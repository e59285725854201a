using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace PowerLint.Devices;

/// <summary>
/// Parts whose names follow a pattern: <c>avr{flash}da{pins}</c> with the flash sizes and pin counts that there are. Each
/// combination is a member like one that is listed by its name.
/// </summary>
internal static partial class MemberPatterns
{
    /// <summary>The members that the patterns in a file's head stand for, in the order of their values.</summary>
    public static IEnumerable<FamilyMember> MembersOf(MapNode document, DeviceModelErrors errors)
    {
        if (document["member-patterns"] is not { } node)
        {
            yield break;
        }

        foreach (var (pattern, value) in MapReader.Of(node, "'member-patterns'", errors).Node.Entries)
        {
            var entry = MapReader.Of(value, $"member pattern {pattern.Text}", errors);
            var places = entry.Need("values") is { } values ? PlacesOf(pattern, values, errors) : [];
            var common = new Share(entry);
            entry.Finish();
            foreach (var choices in Combinations(places))
            {
                yield return MemberOf(pattern, common, choices, errors);
            }
        }
    }

    /// <summary>What the whole pattern, or one value of a placeholder, gives to a member.</summary>
    private sealed class Share(MapReader entry)
    {
        public ImmutableArray<ScalarNode> Macros { get; } = [.. entry.Scalars("macros")];

        public ImmutableArray<ScalarNode> Packages { get; } = [.. entry.Scalars("packages")];

        public ImmutableArray<ScalarNode> Variants { get; } = [.. entry.Scalars("variants")];
    }

    /// <summary>A value of a placeholder, with what it gives to the members that have it.</summary>
    private sealed record Choice(string Placeholder, ScalarNode Value, Share? Share);

    // A list of values, or a mapping of values to what they give.
    private static List<ImmutableArray<Choice>> PlacesOf(
        ScalarNode pattern,
        DeviceNode values,
        DeviceModelErrors errors
    )
    {
        var places = new List<ImmutableArray<Choice>>();
        foreach (var (placeholder, node) in MapReader.Of(values, $"'values' of {pattern.Text}", errors).Node.Entries)
        {
            if (!pattern.Text.Contains($"{{{placeholder.Text}}}", StringComparison.Ordinal))
            {
                errors.Add(placeholder, $"the member pattern {pattern.Text} has no place for '{{{placeholder.Text}}}'");
            }

            places.Add(
                node is MapNode map
                    ? [.. map.Entries.Select(e => new Choice(placeholder.Text, e.Key, ShareOf(e.Key, e.Value, errors)))]
                    :
                    [
                        .. MapReader
                            .ScalarsOf(node, $"'{placeholder.Text}' of {pattern.Text}", errors)
                            .Select(value => new Choice(placeholder.Text, value, Share: null)),
                    ]
            );
        }

        foreach (var match in Placeholder().EnumerateMatches(pattern.Text))
        {
            var placeholder = pattern.Text.Substring(match.Index + 1, match.Length - 2);
            if (
                !places.Any(place =>
                    place.Any(c => string.Equals(c.Placeholder, placeholder, StringComparison.Ordinal))
                )
            )
            {
                errors.Add(pattern, $"the member pattern {pattern.Text} lacks the values of '{{{placeholder}}}'");
                return
                [
                    [],
                ];
            }
        }

        return places;
    }

    [GeneratedRegex(@"\{[^{}]*\}", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Placeholder();

    private static Share? ShareOf(ScalarNode value, DeviceNode node, DeviceModelErrors errors)
    {
        if (node is ScalarNode { IsNull: true })
        {
            return null;
        }

        var entry = MapReader.Of(node, $"value {value.Text} of a member pattern", errors);
        var share = new Share(entry);
        entry.Finish();
        return share;
    }

    private static IEnumerable<ImmutableArray<Choice>> Combinations(IEnumerable<ImmutableArray<Choice>> places) =>
        places.Aggregate(
            (IEnumerable<ImmutableArray<Choice>>)
                [
                    [],
                ],
            (heads, place) => heads.SelectMany(head => place.Select(choice => head.Add(choice)))
        );

    private static FamilyMember MemberOf(
        ScalarNode pattern,
        Share common,
        ImmutableArray<Choice> choices,
        DeviceModelErrors errors
    )
    {
        var values = choices.ToDictionary(c => c.Placeholder, c => (DeviceNode)c.Value, StringComparer.Ordinal);
        Share[] shares = [common, .. choices.Select(c => c.Share).OfType<Share>()];
        ScalarNode Fill(ScalarNode text) => (ScalarNode)Placeholders.Fill(text, values, errors);
        return new FamilyMember(
            Fill(pattern).Text,
            [.. shares.SelectMany(share => share.Macros).Select(macro => Fill(macro).Text)],
            [.. shares.SelectMany(share => share.Packages).Select(package => Fill(package).Text)],
            [.. shares.SelectMany(share => share.Variants).Select(Fill)],
            pattern
        );
    }
}
