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

    /// <summary>The C blocks under a heading.</summary>
    public static ImmutableArray<string> BlocksOf(RuleDescriptor rule, string heading) =>
        [.. Block().Matches(SectionOf(rule, heading)).Select(match => match.Groups["code"].Value)];

    /// <summary>Writes a block into a folder and loads it as a case about the rule.</summary>
    public static FirmwareCase Write(RuleDescriptor rule, string heading, int index, string folder)
    {
        ArgumentNullException.ThrowIfNull(rule);
        var path = Path.Combine(folder, $"{rule.Id}-{heading.ToLowerInvariant()}-{index}.c");
        File.WriteAllText(path, BlocksOf(rule, heading)[index]);
        return FirmwareCase.Load(path, rule.Id);
    }

    [GeneratedRegex(@"^## (?<name>.*)$", RegexOptions.ExplicitCapture | RegexOptions.Multiline, 1000)]
    private static partial Regex Heading();

    [GeneratedRegex(
        @"^```c\n(?<code>.*?)^```$",
        RegexOptions.ExplicitCapture | RegexOptions.Multiline | RegexOptions.Singleline,
        1000
    )]
    private static partial Regex Block();
}
