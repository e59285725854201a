using System.Xml.Linq;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>Dependencies between the projects point one way.</summary>
public sealed class LayeringTests
{
    // What each project may reference; the order is that of the data.
    private static readonly Dictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        ["PowerLint.Program"] = [],
        ["PowerLint.Frontend"] = ["PowerLint.Program"],
        ["PowerLint.Devices.Generator"] = [],
        ["PowerLint.Devices"] = ["PowerLint.Devices.Generator"],
        ["PowerLint.Devices.Digest"] = ["PowerLint.Devices"],
        ["PowerLint.Analysis"] = ["PowerLint.Program", "PowerLint.Devices"],
        ["PowerLint.Rules.Generator"] = [],
        ["PowerLint.Rules"] =
        [
            "PowerLint.Program",
            "PowerLint.Devices",
            "PowerLint.Analysis",
            "PowerLint.Rules.Generator",
        ],
        ["PowerLint.Currents"] = ["PowerLint.Devices", "PowerLint.Analysis", "PowerLint.Rules"],
        ["PowerLint.Reports"] =
        [
            "PowerLint.Program",
            "PowerLint.Devices",
            "PowerLint.Analysis",
            "PowerLint.Rules",
            "PowerLint.Currents",
        ],
        ["PowerLint.CommandLine"] =
        [
            "PowerLint.Program",
            "PowerLint.Frontend",
            "PowerLint.Devices",
            "PowerLint.Analysis",
            "PowerLint.Rules",
            "PowerLint.Currents",
            "PowerLint.Reports",
            "PowerLint.Devices.Digest",
        ],
    };

    public static TheoryData<string> Projects =>
        [
            .. Directory
                .EnumerateDirectories(RepositoryRoot.Combine("src"))
                .Select(folder => Path.GetFileName(folder))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_references_only_what_stands_before_it(string project)
    {
        Assert.True(Allowed.ContainsKey(project), $"{project} is not in the table of layers: add it on purpose.");
        var file = RepositoryRoot.Combine("src", project, project + ".csproj");
        var references = XDocument
            .Load(file)
            .Descendants("ProjectReference")
            .Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value))
            .ToArray();

        Assert.Empty(references.Except(Allowed[project], StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("PowerLint.Frontend", "libclang")]
    [InlineData("PowerLint.Devices", "YamlDotNet")]
    public void Only_one_project_knows_this_package(string owner, string package)
    {
        var users = Directory
            .EnumerateFiles(RepositoryRoot.Combine("src"), "*.csproj", SearchOption.AllDirectories)
            .Where(file =>
                XDocument
                    .Load(file)
                    .Descendants("PackageReference")
                    .Any(reference =>
                        string.Equals(reference.Attribute("Include")?.Value, package, StringComparison.Ordinal)
                    )
            )
            .Select(Path.GetFileNameWithoutExtension)
            .Where(name => !string.Equals(name, "PowerLint.CommandLine", StringComparison.Ordinal));

        Assert.All(users, user => Assert.Equal(owner, user));
    }
}
