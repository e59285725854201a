using PowerLint.CommandLine;
using PowerLint.Devices;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>A rule that a model says too little for is not silently clean.</summary>
public sealed class UncheckedRulesTests
{
    private static readonly string Devices = RepositoryRoot.Combine("devices");

    public static TheoryData<string> Families =>
        [.. DeviceCatalog.Open(Devices).Families.Select(family => family.Family)];

    [Theory]
    [MemberData(nameof(Families))]
    public void Every_part_says_enough_for_every_rule(string family)
    {
        var catalog = DeviceCatalog.Open(Devices);
        foreach (var part in catalog.Families.Single(f => f.Family == family).Members)
        {
            Assert.Empty(UncheckedRules.Of(catalog.Load(part), RuleSettings.Default));
        }
    }

    [Fact]
    public void A_model_that_does_not_speak_of_gates_is_named_with_the_rules_that_need_them()
    {
        using var folder = new TemporaryFolder();
        foreach (var file in Directory.EnumerateFiles(Devices))
        {
            folder.Write(
                Path.GetFileName(file),
                File.ReadAllText(file).Replace("\ngates: {}\n", "\n", StringComparison.Ordinal)
            );
        }

        var device = DeviceCatalog.Open(folder.Path).Load("avr128da48");

        var notice = Assert.Single(UncheckedRules.Of(device, RuleSettings.Default));
        Assert.Equal("rule-not-checked", notice.Id);
        Assert.Equal(
            "gated-write and peripheral-clock-left-on: not checked on avr128da48, whose model does not say what gates it has. "
                + "Add the section 'gates' to devices/avr-da-db.yaml.",
            notice.Message
        );
    }
}
