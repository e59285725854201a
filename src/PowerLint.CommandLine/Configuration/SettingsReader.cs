using System.Collections.Immutable;
using System.Globalization;
using PowerLint.Devices;
using PowerLint.Rules;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace PowerLint.CommandLine;

/// <summary>Reads the configuration's YAML; <c>powerlint.schema.json</c> says the same for editors.</summary>
/// <param name="file">The file as given, for errors.</param>
internal sealed class SettingsReader(string file)
{
    private static readonly ImmutableSortedDictionary<string, WireLevel> Levels = ImmutableSortedDictionary
        .Create<string, WireLevel>(StringComparer.Ordinal)
        .Add("low", WireLevel.Low)
        .Add("high", WireLevel.High);

    private static readonly ImmutableSortedDictionary<string, WireLevel> DrivenLevels = Levels.Add(
        "either",
        WireLevel.Either
    );

    private static readonly ImmutableSortedDictionary<string, WireLevel> Pulls = ImmutableSortedDictionary
        .Create<string, WireLevel>(StringComparer.Ordinal)
        .Add("down", WireLevel.Low)
        .Add("up", WireLevel.High);

    private static readonly ImmutableSortedDictionary<string, RuleLevel> RuleLevels = ImmutableSortedDictionary
        .Create<string, RuleLevel>(StringComparer.Ordinal)
        .Add("error", RuleLevel.Error)
        .Add("note", RuleLevel.Note)
        .Add("off", RuleLevel.Off)
        .Add("warning", RuleLevel.Warning);

    private readonly List<ConfigurationError> _errors = [];

    private enum RuleLevel
    {
        Off,
        Note,
        Warning,
        Error,
    }

    /// <summary>Reads the text of a file.</summary>
    /// <exception cref="ConfigurationException">Something in it is wrong.</exception>
    internal Settings Read(string text)
    {
        var settings = Load(text) is { } root ? ReadRoot(root) : Settings.None;
        if (_errors.Count > 0)
        {
            throw new ConfigurationException([.. _errors.OrderBy(error => error.Line)]);
        }

        return settings;
    }

    private YamlMapping? Load(string text)
    {
        using var reader = new StringReader(text);
        var parser = new ShallowYaml(new YamlDotNet.Core.Parser(reader));
        try
        {
            var stream = new YamlStream();
            stream.Load(parser);
            return stream.Documents.Count == 0
                ? null
                : YamlMapping.From(file, "the file", stream.Documents[0].RootNode, _errors);
        }
        catch (YamlException exception)
        {
            var reason = exception.InnerException is null or InvalidOperationException
                ? exception.Message
                : exception.InnerException.Message;
            _errors.Add(new ConfigurationError(file, (int)exception.Start.Line, $"not valid YAML: {reason}"));
            return null;
        }
        catch (ArgumentException)
        {
            // The library's answer to a list or mapping that closes where none is open.
            _errors.Add(
                new ConfigurationError(
                    file,
                    (int)(parser.Current?.Start.Line ?? 1),
                    "not valid YAML: a value is missing before this place, or the indentation is wrong"
                )
            );
            return null;
        }
    }

    private Settings ReadRoot(YamlMapping root)
    {
        root.Allow(
            "device",
            "package",
            "supply-volts",
            "clocks",
            "options",
            "board",
            "battery",
            "profile",
            "rules",
            "paths",
            "exclude"
        );
        var clocks = root.Mapping("clocks");
        clocks?.Allow("cpu-hertz");
        var board = root.Mapping("board");
        board?.Allow("pins", "regulators");
        var regulators = board?.Mapping("regulators");
        var pins = board?.Mapping("pins");
        return new Settings
        {
            Device = root.Text("device"),
            Package = root.Text("package"),
            PackageLine = root.Entries.FirstOrDefault(entry => entry.Key is "package").Line,
            SupplyVolts = root.Number("supply-volts"),
            CpuHertz = clocks?.Number("cpu-hertz"),
            Options = ReadOptions(root.Mapping("options")),
            Pins = ReadPins(pins),
            FittedRegulators = ReadRegulators(regulators),
            RegulatorLines = regulators is null ? [] : [.. regulators.Entries.Select(entry => (entry.Key, entry.Line))],
            PinLines = pins is null ? [] : [.. pins.Entries.Select(entry => (entry.Key, entry.Line))],
            Battery = ReadBattery(root.Mapping("battery")),
            Profile = ReadProfile(root.Mapping("profile")),
            Rules = ReadRules(root.Mapping("rules")),
            PathRules = ReadPathRules(root.Mapping("paths")),
            Excluded = ReadExcluded(root),
        };
    }

    private static ImmutableArray<OptionSetting> ReadOptions(YamlMapping? options)
    {
        if (options is null)
        {
            return [];
        }

        var result = ImmutableArray.CreateBuilder<OptionSetting>();
        foreach (var (name, line, node) in options.Entries)
        {
            if (node is YamlScalarNode { Value: { } text } && TryWord(text, out var value))
            {
                result.Add(new OptionSetting(name, value, line));
            }
            else
            {
                options.Error(node, $"options.{name} must be a whole number, such as 6, 0x62 or 0b110");
            }
        }

        return result.ToImmutable();
    }

    private static bool TryWord(string text, out ulong value)
    {
        var digits = text.Replace("_", "", StringComparison.Ordinal);
        if (digits.StartsWith("0x", StringComparison.OrdinalIgnoreCase))
        {
            return ulong.TryParse(
                digits.AsSpan(2),
                NumberStyles.AllowHexSpecifier,
                CultureInfo.InvariantCulture,
                out value
            );
        }

        return digits.StartsWith("0b", StringComparison.OrdinalIgnoreCase)
            ? ulong.TryParse(
                digits.AsSpan(2),
                NumberStyles.AllowBinarySpecifier,
                CultureInfo.InvariantCulture,
                out value
            )
            : ulong.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out value);
    }

    private static ImmutableDictionary<string, BoardPin> ReadPins(YamlMapping? pins)
    {
        var result = ImmutableDictionary.CreateBuilder<string, BoardPin>(StringComparer.Ordinal);
        foreach (var (name, _, node) in pins?.Entries ?? [])
        {
            if (pins!.Mapping(name) is not { } pin)
            {
                continue;
            }

            pin.Allow("load", "active", "milliamps", "pull", "ohms", "driven", "connected");
            var read = new BoardPin(
                pin.Text("load"),
                pin.Choice("active", Levels),
                pin.Number("milliamps", mayBeZero: true),
                pin.Choice("pull", Pulls),
                pin.Number("ohms"),
                pin.Choice("driven", DrivenLevels),
                pin.Flag("connected") ?? true
            );
            CheckPin(name, pin, node, read);
            result[name] = read;
        }

        return result.ToImmutable();
    }

    private static ImmutableDictionary<string, bool> ReadRegulators(YamlMapping? regulators)
    {
        var result = ImmutableDictionary.CreateBuilder<string, bool>(StringComparer.Ordinal);
        foreach (var (name, _, node) in regulators?.Entries ?? [])
        {
            if (regulators!.Mapping(name) is not { } regulator)
            {
                continue;
            }

            regulator.Allow("fitted");
            if (regulator.Flag("fitted") is { } isFitted)
            {
                result[name] = isFitted;
            }
            else
            {
                regulator.Error(
                    node,
                    $"board.regulators.{name} says nothing: add fitted: yes, or no, for the parts that its lower setting needs"
                );
            }
        }

        return result.ToImmutable();
    }

    private static void CheckPin(string name, YamlMapping pin, YamlNode node, BoardPin read)
    {
        var keys = pin.Entries.Select(entry => entry.Key).ToHashSet(StringComparer.Ordinal);
        if (keys.Contains("load") && !keys.Contains("active"))
        {
            pin.Error(node, $"board.pins.{name} has a load: say at which level it draws current, active: high or low");
        }

        if (!keys.Contains("load") && (keys.Contains("active") || keys.Contains("milliamps")))
        {
            pin.Error(node, $"board.pins.{name} gives active or milliamps without a load: name it, load: \"…\"");
        }

        if (keys.Contains("ohms") && !keys.Contains("pull"))
        {
            pin.Error(node, $"board.pins.{name} gives ohms without a pull: add pull: up or down");
        }

        if (!read.IsConnected && keys.Count > 1)
        {
            pin.Error(node, $"board.pins.{name} is not connected, so nothing else can be said of it");
        }
    }

    private static BatterySetting? ReadBattery(YamlMapping? battery)
    {
        battery?.Allow("milliamp-hours", "usable-percent");
        return battery?.Number("milliamp-hours") is { } capacity
            ? new BatterySetting(capacity, battery.Number("usable-percent", maximum: 100) ?? 100)
            : null;
    }

    private static ImmutableArray<ProfilePhase> ReadProfile(YamlMapping? profile)
    {
        var result = ImmutableArray.CreateBuilder<ProfilePhase>();
        foreach (var (name, _, node) in profile?.Entries ?? [])
        {
            if (profile!.Mapping(name) is not { } phase)
            {
                continue;
            }

            phase.Allow("seconds", "every-seconds");
            if (phase.Number("seconds") is { } seconds && phase.Number("every-seconds") is { } every)
            {
                result.Add(new ProfilePhase(name, seconds, every));
            }
            else
            {
                phase.Error(node, $"profile.{name} needs both seconds and every-seconds");
            }
        }

        return result.ToImmutable();
    }

    private static ImmutableDictionary<string, RuleSetting> ReadRules(YamlMapping? rules)
    {
        var result = ImmutableDictionary.CreateBuilder<string, RuleSetting>(StringComparer.Ordinal);
        foreach (var (id, line, node) in rules?.Entries ?? [])
        {
            if (ReadRule(rules!, id, line, node) is { } rule)
            {
                result[id] = rule;
            }
        }

        return result.ToImmutable();
    }

    private static RuleSetting? ReadRule(YamlMapping rules, string id, int line, YamlNode node)
    {
        if (!IsRule(rules, id, line))
        {
            return null;
        }

        if (node is YamlScalarNode)
        {
            return rules.Choice($"rules.{id}", node, RuleLevels) is { } level
                ? new RuleSetting(level == RuleLevel.Off, Level(level), ImmutableDictionary<string, double>.Empty, line)
                : null;
        }

        if (rules.Mapping(id) is not { } rule)
        {
            return null;
        }

        string[] known = [.. RuleThresholds.Of(id)];
        rule.Allow(["level", .. known]);
        var thresholds = ImmutableDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        foreach (var key in known)
        {
            if (rule.Number(key, mayBeZero: true) is { } value)
            {
                thresholds[key] = value;
            }
        }

        var chosen = rule.Choice("level", RuleLevels);
        return new RuleSetting(chosen == RuleLevel.Off, Level(chosen), thresholds.ToImmutable(), line);
    }

    private static ImmutableArray<PathRule> ReadPathRules(YamlMapping? paths)
    {
        var result = ImmutableArray.CreateBuilder<PathRule>();
        foreach (var (pattern, _, _) in paths?.Entries ?? [])
        {
            if (paths!.Mapping(pattern) is not { } rules)
            {
                continue;
            }

            var levels = ImmutableDictionary.CreateBuilder<string, Level?>(StringComparer.Ordinal);
            foreach (var (id, line, node) in rules.Entries)
            {
                if (!IsRule(rules, id, line))
                {
                    continue;
                }

                if (rules.Choice($"paths.{pattern}.{id}", node, RuleLevels) is { } level)
                {
                    levels[id] = Level(level);
                }
            }

            result.Add(new PathRule(pattern, levels.ToImmutable()));
        }

        return result.ToImmutable();
    }

    private static bool IsRule(YamlMapping rules, string id, int line)
    {
        var known = RuleCatalog.Find(id) is not null;
        if (!known)
        {
            rules.Error(
                line,
                $"there is no rule '{id}'{NearestNames.Hint(id, RuleCatalog.All.Select(rule => rule.Id))}"
            );
        }

        return known;
    }

    private static Level? Level(RuleLevel? level) =>
        level switch
        {
            RuleLevel.Note => Rules.Level.Note,
            RuleLevel.Warning => Rules.Level.Warning,
            RuleLevel.Error => Rules.Level.Error,
            _ => null,
        };

    private static ImmutableArray<string> ReadExcluded(YamlMapping root)
    {
        var result = ImmutableArray.CreateBuilder<string>();
        foreach (var node in root.List("exclude"))
        {
            if (node is YamlScalarNode { Value.Length: > 0 } scalar)
            {
                result.Add(scalar.Value!);
            }
            else
            {
                root.Error(node, "exclude must list paths, such as \"third-party/**\"");
            }
        }

        return result.ToImmutable();
    }
}
