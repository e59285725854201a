using System.Text.Json.Nodes;
using Json.Schema;
using PowerLint.CommandLine;
using PowerLint.Rules;
using PowerLint.Testing;
using YamlDotNet.RepresentationModel;

namespace PowerLint.Tests;

/// <summary>The configuration: what is read, what is refused with which line, and that the published schema says the same.</summary>
public sealed class ConfigurationTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromFile(
        RepositoryRoot.Combine("src", "PowerLint.CommandLine", "powerlint.schema.json")
    );

    private const string Full = """
        device: atmega328p
        package: tqfp32
        supply-volts: 3.3
        clocks:
          cpu-hertz: 8_000_000
        options:
          LFUSE: 0x62
          LFUSE.CKOUT: 0
        board:
          pins:
            PB3: { load: "probe supply switch", active: high, milliamps: 2.1 }
            PD2: { pull: down, ohms: 10000 }
            PC1: { driven: either }
            PD7: { connected: no }
        battery: { milliamp-hours: 2400, usable-percent: 80 }
        profile:
          report: { seconds: 2.5, every-seconds: 900 }
        rules:
          floating-pin: off
          polling-wait: error
          busy-wait-delay: { level: note, start-up-milliseconds: 50, loop-milliseconds: 5 }
        paths:
          "drivers/**": { polling-wait: off, floating-pin: note }
        exclude: ["third-party/**"]
        """;

    [Fact]
    public void Everything_that_the_design_names_is_read()
    {
        var settings = new SettingsReader("powerlint.yaml").Read(Full);

        Assert.Equal("atmega328p", settings.Device);
        Assert.Equal("tqfp32", settings.Package);
        Assert.Equal(3.3, settings.SupplyVolts);
        Assert.Equal(8e6, settings.CpuHertz);
        Assert.Equal([("LFUSE", 0x62UL), ("LFUSE.CKOUT", 0UL)], settings.Options.Select(o => (o.Name, o.Value)));
        Assert.Equal(new BoardPin("probe supply switch", WireLevel.High, 2.1), settings.Pins["PB3"]);
        Assert.Equal(new BoardPin(Pull: WireLevel.Low, PullOhms: 10000), settings.Pins["PD2"]);
        Assert.Equal(new BoardPin(Driven: WireLevel.Either), settings.Pins["PC1"]);
        Assert.Equal(new BoardPin(IsConnected: false), settings.Pins["PD7"]);
        Assert.Equal(new BatterySetting(2400, 80), settings.Battery);
        Assert.Equal([new ProfilePhase("report", 2.5, 900)], settings.Profile);
        Assert.Equal("third-party/**", Assert.Single(settings.Excluded));
        var rules = settings.RuleSettings();
        Assert.False(rules.IsOn("floating-pin"));
        Assert.Equal(Level.Error, rules.Levels["polling-wait"]);
        Assert.Equal(Level.Note, rules.Levels["busy-wait-delay"]);
        Assert.Equal(0.050, rules.StartUpBusyWaitSeconds, 1e-9);
        Assert.Equal(0.005, rules.LoopBusyWaitSeconds, 1e-9);
        var below = Assert.Single(settings.PathRules);
        Assert.Equal("drivers/**", below.Pattern);
        Assert.Null(below.Levels["polling-wait"]);
        Assert.Equal(Level.Note, below.Levels["floating-pin"]);
    }

    [Fact]
    public void An_empty_file_says_nothing() =>
        Assert.Equal(Settings.None.Device, new SettingsReader("x").Read("").Device);

    // Each text is wrong in one way; the schema and the reader must both refuse it.
    [Theory]
    [InlineData("devise: atmega328p", 1)]
    [InlineData("device: [a, b]", 1)]
    [InlineData("supply-volts: 0", 1)]
    [InlineData("supply-volts: high", 1)]
    [InlineData("clocks: { cpu-herz: 1 }", 1)]
    [InlineData("clocks: 8000000", 1)]
    [InlineData("options:\n  LFUSE: low", 2)]
    [InlineData("options:\n  LFUSE: -1", 2)]
    [InlineData("board:\n  pinns: {}", 2)]
    [InlineData("board:\n  pins:\n    PB0: { load: lamp }", 3)]
    [InlineData("board:\n  pins:\n    PB0: { active: high }", 3)]
    [InlineData("board:\n  pins:\n    PB0: { load: lamp, active: up }", 3)]
    [InlineData("board:\n  pins:\n    PB0: { ohms: 10 }", 3)]
    [InlineData("board:\n  pins:\n    PB0: { pull: high }", 3)]
    [InlineData("board:\n  pins:\n    PB0: { driven: maybe }", 3)]
    [InlineData("board:\n  pins:\n    PB0: { connected: perhaps }", 3)]
    [InlineData("battery: { milliamp-hours: 100, usable-percent: 120 }", 1)]
    [InlineData("profile:\n  report: { seconds: 2 }", 2)]
    [InlineData("rules:\n  polling-wait: loud", 2)]
    [InlineData("rules:\n  busy-wait-delay: { loop-seconds: 1 }", 2)]
    [InlineData("rules:\n  polling-wait: { loop-milliseconds: 1 }", 2)]
    [InlineData("paths:\n  drivers: off", 2)]
    [InlineData("paths:\n  drivers: { floating-pin: loud }", 2)]
    [InlineData("exclude: third-party", 1)]
    public void What_is_wrong_is_refused_with_its_line(string text, int line)
    {
        var refused = Assert.Throws<ConfigurationException>(() => new SettingsReader("powerlint.yaml").Read(text));

        Assert.Equal(line, Assert.Single(refused.Errors).Line);
        Assert.StartsWith($"powerlint.yaml:{line}: ", refused.Message, StringComparison.Ordinal);
        Assert.False(IsValid(text), "the published schema accepts it");
    }

    [Fact]
    public void The_published_schema_accepts_what_the_reader_reads() => Assert.True(IsValid(Full));

    [Theory]
    [InlineData("examples/hive-scale/powerlint.yaml")]
    [InlineData("examples/hive-scale-mended/powerlint.yaml")]
    public void The_examples_fit_the_schema(string path) =>
        Assert.True(IsValid(File.ReadAllText(RepositoryRoot.Combine(path.Split('/')))));

    [Fact]
    public void The_schema_ships_next_to_the_program() =>
        Assert.True(File.Exists(Path.Combine(AppContext.BaseDirectory, "powerlint.schema.json")));

    [Fact]
    public void The_nearest_file_above_the_sources_counts()
    {
        using var folder = new TemporaryFolder();
        var inner = Directory.CreateDirectory(Path.Combine(folder.Path, "a", "b")).FullName;
        folder.Write("powerlint.yaml", "device: atmega328p");
        Assert.Equal(Path.Combine(folder.Path, "powerlint.yaml"), SettingsFile.FindUpwards(inner));
    }

    [Theory]
    [InlineData("third-party/**", "third-party/a/b.c", true)]
    [InlineData("third-party", "third-party/a/b.c", true)]
    [InlineData("**/generated/*.c", "src/generated/x.c", true)]
    [InlineData("**/generated/*.c", "generated/x.c", true)]
    [InlineData("src/*.c", "src/a/b.c", false)]
    [InlineData("src/?.c", "src/ab.c", false)]
    [InlineData("third-party", "third-party-2/a.c", false)]
    public void Excluded_paths_match_as_said(string pattern, string path, bool matches) =>
        Assert.Equal(matches, new PathPatterns("/firmware", [pattern]).Match("/firmware/" + path));

    [Fact]
    public void Levels_below_a_path_hold_there_only()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(Path.Combine(folder.Path, "drivers"));
        folder.Write(
            "powerlint.yaml",
            "device: atmega328p\nrules: { floating-pin: off, peripheral-clock-left-on: off }\n"
                + "paths: { drivers: { sleep-disabled: off } }\n"
        );
        const string source = "int main(void)\n{\n    for (;;)\n        __asm__ __volatile__(\"sleep\");\n}\n";
        folder.Write("main.c", source);
        folder.Write("drivers/main.c", source);
        Assert.Equal(1, TestConsole.Run(folder.Path, "check", "main.c").Status);
        Assert.Equal(
            "No findings on atmega328p\n",
            TestConsole.Run(folder.Path, "check", Path.Combine("drivers", "main.c")).Output
        );

        folder.Write(
            "powerlint.yaml",
            "device: atmega328p\nrules: { floating-pin: off, peripheral-clock-left-on: off }\n"
                + "paths: { \"**\": { sleep-disabled: off }, \"*.c\": { sleep-disabled: warning } }\n"
        );
        Assert.Contains(
            "warning sleep-disabled",
            TestConsole.Run(folder.Path, "check", "main.c").Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_rule_that_does_not_exist_is_refused_below_paths_too() =>
        Assert.Contains(
            "did you mean 'floating-pin'",
            Assert
                .Throws<ConfigurationException>(() =>
                    new SettingsReader("x").Read("paths: { drivers: { floting-pin: off } }")
                )
                .Message,
            StringComparison.Ordinal
        );

    private static bool IsValid(string yaml)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        var document = System.Text.Json.JsonSerializer.SerializeToElement(ToJson(stream.Documents[0].RootNode));
        return Schema.Evaluate(document).IsValid;
    }

    // As an editor's YAML support sees it: plain scalars become numbers and booleans by YAML's core schema.
    private static JsonNode? ToJson(YamlNode node) =>
        node switch
        {
            YamlMappingNode mapping => Object(mapping),
            YamlSequenceNode sequence => new JsonArray([.. sequence.Children.Select(ToJson)]),
            YamlScalarNode { Style: YamlDotNet.Core.ScalarStyle.Plain, Value: { } text } => Plain(text),
            YamlScalarNode scalar => JsonValue.Create(scalar.Value),
            _ => null,
        };

    private static JsonObject Object(YamlMappingNode mapping)
    {
        var result = new JsonObject();
        foreach (var (key, value) in mapping.Children)
        {
            result.Add(((YamlScalarNode)key).Value!, ToJson(value));
        }

        return result;
    }

    private static JsonValue Plain(string text) =>
        text switch
        {
            "true" => JsonValue.Create(true),
            "false" => JsonValue.Create(false),
            _ when text.StartsWith("0x", StringComparison.Ordinal) => JsonValue.Create(Convert.ToInt64(text, 16)),
            _ when double.TryParse(text, System.Globalization.CultureInfo.InvariantCulture, out var number) =>
                JsonValue.Create(number),
            _ => JsonValue.Create(text),
        };
}
