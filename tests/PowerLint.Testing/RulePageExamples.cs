using System.Collections.Immutable;
using System.Text.RegularExpressions;
using PowerLint.Rules;

namespace PowerLint.Testing;

/// <summary>The C blocks of a rule page, written out as firmware.</summary>
public static partial class RulePageExamples
{
    /// <summary>The headings that every page has, in order.</summary>
    public static ImmutableArray<string> Headings { get; } =
    ["What it finds", "Why it costs", "Example", "Mended", "When to allow it", "Cautions", "Sources"];

    /// <summary>The device styles, in the order in which pages show their examples.</summary>
    public static ImmutableArray<string> Styles { get; } =
    ["Classic AVR", "Newer AVR", "XMEGA", "MSP430", "STM32", "nRF52", "SAM"];

    /// <summary>The second-level headings of a page, in order.</summary>
    public static ImmutableArray<string> HeadingsOf(RuleDescriptor rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return [.. Heading().Matches(rule.Page).Select(match => match.Groups["name"].Value.Trim())];
    }

    /// <summary>The text under a heading.</summary>
    public static string SectionOf(RuleDescriptor rule, string heading)
    {
        ArgumentNullException.ThrowIfNull(rule);
        var start = rule.Page.IndexOf($"\n## {heading}\n", StringComparison.Ordinal);
        if (start < 0)
        {
            return "";
        }

        var from = rule.Page.IndexOf('\n', start + 1);
        var next = rule.Page.IndexOf("\n## ", from, StringComparison.Ordinal);
        return next < 0 ? rule.Page[from..] : rule.Page[from..next];
    }

    /// <summary>The styles that have an example under a heading, in order; empty where it is one for all styles.</summary>
    public static ImmutableArray<string> StylesOf(RuleDescriptor rule, string heading) =>
        [.. StyleHeading().Matches(Prose(SectionOf(rule, heading))).Select(match => match.Groups["name"].Value)];

    /// <summary>What a section says below its last example.</summary>
    public static string ClosingOf(RuleDescriptor rule, string heading)
    {
        var section = SectionOf(rule, heading).TrimEnd();
        return section[(section.LastIndexOf("```", StringComparison.Ordinal) + 3)..].Trim();
    }

    /// <summary>The C blocks under a heading, of one style or, where it is empty, without one.</summary>
    public static ImmutableArray<string> BlocksOf(RuleDescriptor rule, string heading, string style)
    {
        var section = SectionOf(rule, heading);
        var starts = StyleHeading().Matches(section).Where(match => !IsInBlock(section, match.Index)).ToArray();
        var at = Array.FindIndex(starts, match => match.Groups["name"].Value == style);
        var part = (style.Length, at) switch
        {
            (0, _) => starts.Length == 0 ? section : section[..starts[0].Index],
            (_, < 0) => "",
            _ => section[starts[at].Index..(at + 1 < starts.Length ? starts[at + 1].Index : section.Length)],
        };
        return [.. Block().Matches(part).Select(match => match.Groups["code"].Value)];
    }

    /// <summary>Writes an example into a folder and loads it as a case about the rule.</summary>
    public static FirmwareCase Write(RuleDescriptor rule, string heading, string style, string folder)
    {
        ArgumentNullException.ThrowIfNull(rule);
        var kind = style.ToLowerInvariant().Replace(' ', '-');
        var path = Path.Combine(folder, $"{rule.Id}-{heading.ToLowerInvariant()}-{kind}.c");
        File.WriteAllText(path, BlocksOf(rule, heading, style).Single());
        return FirmwareCase.Load(path, rule.Id);
    }

    private static string Prose(string section) => Block().Replace(section, "");

    private static bool IsInBlock(string section, int index) =>
        Block().Matches(section).Any(block => block.Index < index && index < block.Index + block.Length);

    [GeneratedRegex(@"^## (?<name>.*)$", RegexOptions.ExplicitCapture | RegexOptions.Multiline, 1000)]
    private static partial Regex Heading();

    [GeneratedRegex(@"^### (?<name>.*)$", RegexOptions.ExplicitCapture | RegexOptions.Multiline, 1000)]
    private static partial Regex StyleHeading();

    [GeneratedRegex(
        @"^```c\n(?<code>.*?)^```$",
        RegexOptions.ExplicitCapture | RegexOptions.Multiline | RegexOptions.Singleline,
        1000
    )]
    private static partial Regex Block();
}
