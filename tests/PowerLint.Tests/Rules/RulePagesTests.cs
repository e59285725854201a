using PowerLint.Devices;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>Rule pages have one shape, and what they show is run.</summary>
public sealed class RulePagesTests
{
    private static readonly Lazy<DeviceModel[]> Devices = new(() =>
    {
        var catalog = DeviceCatalog.Open(RepositoryRoot.Combine("devices"));
        return [.. catalog.Names.Select(name => catalog.Load(name))];
    });

    /// <summary>Whether a part has what the rule is about, for rules that concern what only some parts have.</summary>
    private static readonly Dictionary<string, Func<DeviceModel, bool>> Concepts = new(StringComparer.Ordinal)
    {
        ["analog-pin-buffer-on"] = device =>
            device.Pins.Any(pin =>
                !pin.InputBufferOff.IsNever && pin.Functions.Any(use => use.Kind == PinFunctionKind.Analog)
            ),
        ["brown-out-always-on"] = device =>
            device.Peripherals.Any(peripheral =>
                peripheral.GuardsSupply
                || (IsOption(peripheral.On) && peripheral.DrawsIn.Any(entry => !IsOption(entry.When)))
            ),
        ["clock-output-on"] = device => !device.ClockOutputs.IsEmpty,
        ["debug-kept-on"] = device => !device.Sleep.DebugInSleep.IsEmpty,
        ["full-power-regulator"] = device => !device.Regulators.IsEmpty,
        ["gated-write"] = device => device.Gates.Any(gate => gate.LosesWrites),
        ["locked-write"] = device => !device.Protections.IsEmpty,
        ["oscillator-kept-on"] = device => !device.Oscillators.IsEmpty,
        ["peripheral-clock-left-on"] = device => !device.Gates.IsEmpty,
        ["sleep-disabled"] = device => device.Sleep.EnableField is not null,
    };

    public static TheoryData<string> Rules => [.. RuleCatalog.All.Select(rule => rule.Id)];

    /// <summary>Each rule with each style of its examples; an empty one where it is for all styles.</summary>
    public static TheoryData<string, string> Examples =>
        new(
            RuleCatalog.All.SelectMany(rule =>
                RulePageExamples.StylesOf(rule, "Example").DefaultIfEmpty("").Select(style => (rule.Id, style))
            )
        );

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_page_has_the_fixed_headings(string id)
    {
        var rule = RuleCatalog.Find(id)!;

        Assert.Equal([.. RulePageExamples.Headings], RulePageExamples.HeadingsOf(rule).ToArray());
        Assert.StartsWith($"# {id}\n", rule.Page, StringComparison.Ordinal);
        Assert.All(
            RulePageExamples.Headings,
            heading => Assert.True(RulePageExamples.SectionOf(rule, heading).Trim().Length > 0, heading + " is empty")
        );
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void Examples_stand_under_the_known_styles_in_order(string id)
    {
        var rule = RuleCatalog.Find(id)!;
        var styles = RulePageExamples.StylesOf(rule, "Example");

        Assert.Equal(RulePageExamples.Styles.Where(style => styles.Contains(style)), styles);
        Assert.Equal(styles, RulePageExamples.StylesOf(rule, "Mended").AsEnumerable());
        foreach (var heading in (string[])["Example", "Mended"])
        {
            Assert.Equal(styles.IsEmpty ? 1 : 0, RulePageExamples.BlocksOf(rule, heading, "").Length);
            Assert.All(styles, style => Assert.Single(RulePageExamples.BlocksOf(rule, heading, style)));
        }
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_style_without_an_example_has_nothing_of_the_kind(string id)
    {
        var rule = RuleCatalog.Find(id)!;
        var shown = RulePageExamples.StylesOf(rule, "Example");
        var closing = RulePageExamples.ClosingOf(rule, "Example");
        if (shown.IsEmpty)
        {
            Assert.True(StylesLeftOut.AlikeOnAll.ContainsKey(id), "the page has no example by device style");
            return;
        }

        Assert.DoesNotContain(id, StylesLeftOut.AlikeOnAll.Keys);
        string[] leftOut =
        [
            .. StylesLeftOut
                .Single.Where(entry => string.Equals(entry.Rule, id, StringComparison.Ordinal))
                .Select(entry => entry.Style),
        ];
        Assert.Equal(RulePageExamples.Styles.Except(shown), leftOut);
        Assert.Equal(leftOut.Length == 0, closing.Length == 0);
        Assert.All(leftOut, style => Assert.Contains(style, closing, StringComparison.Ordinal));
        if (Concepts.TryGetValue(id, out var has))
        {
            Assert.All(
                leftOut,
                style => Assert.DoesNotContain(Devices.Value, device => device.Style == style && has(device))
            );
        }
    }

    [Fact]
    public void Every_part_is_of_a_style_that_pages_show() =>
        Assert.All(Devices.Value, device => Assert.Contains(device.Style, RulePageExamples.Styles));

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_example_fires_as_its_comments_say(string id, string style)
    {
        var firmware = Run(id, "Example", style, out var differences);

        Assert.Contains(firmware.Marks, mark => mark.Kind == MarkKind.Finding);
        Assert.True(differences.Length == 0, differences);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_mended_example_is_clean(string id, string style)
    {
        var firmware = Run(id, "Mended", style, out var differences);

        Assert.DoesNotContain(firmware.Marks, mark => mark.Kind == MarkKind.Finding);
        Assert.True(differences.Length == 0, differences);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_page_for_one_style_has_its_examples_and_no_other(string id, string style)
    {
        var rule = RuleCatalog.Find(id)!;
        var page = DeviceStylePage.Of(rule, style);
        string[] own =
        [
            .. RulePageExamples.BlocksOf(rule, "Example", style),
            .. RulePageExamples.BlocksOf(rule, "Mended", style),
        ];

        Assert.Equal(own, page.Split("```c\n")[1..].Select(block => block.Split("\n```")[0] + "\n"));
        Assert.EndsWith(RulePageExamples.SectionOf(rule, "Sources").TrimEnd() + "\n", page, StringComparison.Ordinal);
        Assert.DoesNotContain("\n\n\n", page, StringComparison.Ordinal);
    }

    /// <summary>Whether fuses or options alone decide.</summary>
    private static bool IsOption(Condition condition) =>
        condition.Fields.All(field => field.Register.Kind == RegisterKind.Option);

    private static FirmwareCase Run(string id, string heading, string style, out string differences)
    {
        var rule = RuleCatalog.Find(id)!;
        var folder = Directory.CreateTempSubdirectory("powerlint-page-");
        try
        {
            var firmware = RulePageExamples.Write(rule, heading, style, folder.FullName);
            var run = CaseRun.Of(firmware);
            Assert.True(
                style.Length == 0 || run.Result.Device.Style == style,
                $"{firmware.Header.Device} is not {style}"
            );
            differences = string.Join('\n', run.Differences(firmware));
            return firmware;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
