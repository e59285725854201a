using PowerLint.Devices;
using PowerLint.Rules;
using Spectre.Console;

namespace PowerLint.Reports;

/// <summary>Prints rules for people.</summary>
public static class RuleTextWriter
{
    /// <summary>One line a rule, by group.</summary>
    public static void WriteList(IReadOnlyList<RuleDescriptor> rules, IAnsiConsole console)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(console);
        var width = rules.Count == 0 ? 0 : rules.Max(rule => rule.Id.Length);
        foreach (var group in rules.GroupBy(rule => rule.Group, StringComparer.Ordinal))
        {
            console.PrintLine(group.Key, Styles.Heading);
            foreach (var rule in group)
            {
                console.Print($"  {rule.Id.PadRight(width)}  ");
                console.Print(FindingTextWriter.Name(rule.DefaultLevel).PadRight(7), Styles.Of(rule.DefaultLevel));
                console.PrintLine($"  {rule.Summary}");
            }
        }
    }

    /// <summary>A rule's page, its headings marked and the rest as written.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="device">The device whose style's examples are wanted, or null for all examples.</param>
    /// <param name="console">Where to print.</param>
    public static void WritePage(RuleDescriptor rule, DeviceModel? device, IAnsiConsole console)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(console);
        console.Print(rule.Id, Styles.Heading);
        console.Print(" (");
        console.Print(FindingTextWriter.Name(rule.DefaultLevel), Styles.Of(rule.DefaultLevel));
        console.PrintLine($", {rule.Group}): {rule.Summary}");
        console.PrintLine();
        var page = device is null ? rule.Page : DeviceStylePage.Of(rule, device.Style);
        var isCode = false;
        foreach (var line in page.TrimEnd().Split('\n'))
        {
            isCode ^= line.StartsWith("```", StringComparison.Ordinal);
            var isHeading = !isCode && line.StartsWith('#');
            console.PrintLine(line, isHeading ? Styles.Heading : Styles.Plain);
        }

        if (device is not null && !string.Equals(page, rule.Page, StringComparison.Ordinal))
        {
            console.PrintLine();
            console.PrintLine(
                $"This is the page for {device.Name} ({device.Style}); --all shows the examples of all styles."
            );
        }
    }
}
