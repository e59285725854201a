using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>A member of a family as the head of its file lists it.</summary>
/// <param name="Name">The part as its compiler names it.</param>
/// <param name="Macros">Macros that a compiler or a project defines for it.</param>
/// <param name="Packages">Its packages, the usual one first.</param>
/// <param name="Variants">The variants that make it up, in order.</param>
/// <param name="At">Where it stands.</param>
internal sealed record FamilyMember(
    string Name,
    ImmutableArray<string> Macros,
    ImmutableArray<string> Packages,
    ImmutableArray<ScalarNode> Variants,
    ScalarNode At
);

/// <summary>The head of a family file: enough to find a part without reading the tables.</summary>
internal sealed class FamilyHead
{
    public required string Path { get; init; }

    public required ImmutableArray<FamilyMember> Members { get; init; }

    /// <summary>Reads no further than the members.</summary>
    public static FamilyHead Read(string path, DeviceModelErrors errors)
    {
        using var text = new StreamReader(path);
        var head = DeviceFileParser.ParseHead(path, text, ["members", "member-patterns"], errors);
        return new FamilyHead
        {
            Path = path,
            Members = [.. MembersOf(head, errors), .. MemberPatterns.MembersOf(head, errors)],
        };
    }

    private static ImmutableArray<FamilyMember> MembersOf(MapNode document, DeviceModelErrors errors)
    {
        if (document["members"] is not { } node)
        {
            return [];
        }

        var members = ImmutableArray.CreateBuilder<FamilyMember>();
        foreach (var (name, value) in MapReader.Of(node, "'members'", errors).Node.Entries)
        {
            var entry = MapReader.Of(value, $"member {name.Text}", errors);
            members.Add(
                new FamilyMember(
                    name.Text,
                    entry.Texts("macros"),
                    entry.Texts("packages"),
                    [.. entry.Scalars("variants")],
                    name
                )
            );
            entry.Finish();
        }

        return members.ToImmutable();
    }
}
