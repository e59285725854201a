using System.Collections.Immutable;

namespace PowerLint.Testing;

/// <summary>
/// Worked firmware of a device family: <c>tests/families/FAMILY/SCENARIO/</c>. It is compiled as a user would compile it: the part
/// is only in the compiler's flags, and what the board is wired to in a <c>powerlint.yaml</c> beside the sources.
/// </summary>
/// <param name="Family">The family: the name of its device file.</param>
/// <param name="Scenario">The folder of the scenario.</param>
public sealed record FamilyFirmware(string Family, string Scenario)
{
    /// <summary>How many mistakes a planted scenario has.</summary>
    public const int PlantedMistakes = 5;

    /// <summary>Where the families lie.</summary>
    public static string Root { get; } = RepositoryRoot.Combine("tests", "families");

    private const string IncludeFolder = "include";

    private const string PlantedName = "planted";

    /// <summary>Where its sources lie.</summary>
    public string Folder => Path.Combine(Root, Family, Scenario);

    /// <summary>Whether it is full of mistakes: <c>planted</c>, or a name that ends so. Any other has none.</summary>
    public bool IsPlanted =>
        string.Equals(Scenario, PlantedName, StringComparison.Ordinal)
        || Scenario.EndsWith("-" + PlantedName, StringComparison.Ordinal);

    /// <summary>Its sources and expectations.</summary>
    public FirmwareCase Load() => FirmwareCase.Load(Folder, ruleId: null);

    /// <summary>The families that have worked firmware.</summary>
    public static ImmutableArray<string> Families() => FoldersIn(Root);

    /// <summary>All worked firmware, by family and scenario.</summary>
    public static ImmutableArray<FamilyFirmware> All() =>
        [
            .. Families()
                .SelectMany(family =>
                    FoldersIn(Path.Combine(Root, family))
                        .Where(name => !string.Equals(name, IncludeFolder, StringComparison.Ordinal))
                        .Select(name => new FamilyFirmware(family, name))
                ),
        ];

    private static ImmutableArray<string> FoldersIn(string folder) =>
        [
            .. Directory
                .EnumerateDirectories(folder)
                .Select(path => Path.GetFileName(path))
                .Order(StringComparer.Ordinal),
        ];
}
