using System.Text;
using Microsoft.CodeAnalysis.Sarif;
using PowerLint.Devices;
using PowerLint.Rules;

namespace PowerLint.Reports;

/// <summary>Turns rule pages into SARIF rule metadata.</summary>
internal static class SarifRules
{
    /// <summary>One rule, its help with the examples of the device's style: those of all styles would make every log long.</summary>
    internal static ReportingDescriptor Describe(RuleDescriptor rule, DeviceModel? device)
    {
        var page = DeviceStylePage.Of(rule, device?.Style ?? "");
        var descriptor = new ReportingDescriptor
        {
            Id = rule.Id,
            Name = rule.Title,
            ShortDescription = new MultiformatMessageString { Text = rule.Title },
            FullDescription = new MultiformatMessageString { Text = rule.Summary },
            Help = new MultiformatMessageString { Text = PlainText(page), Markdown = page },
            DefaultConfiguration = new ReportingConfiguration { Level = Level(rule.DefaultLevel) },
        };
        descriptor.SetProperty("group", rule.Group);
        descriptor.SetProperty("since", rule.Since);
        return descriptor;
    }

    /// <summary>The level in SARIF's terms.</summary>
    internal static FailureLevel Level(Level level) =>
        level switch
        {
            Rules.Level.Error => FailureLevel.Error,
            Rules.Level.Warning => FailureLevel.Warning,
            _ => FailureLevel.Note,
        };

    /// <summary>Markdown without the signs that only a renderer wants: heading marks, fences and code ticks.</summary>
    private static string PlainText(string markdown)
    {
        var text = new StringBuilder();
        var isCode = false;
        foreach (var line in markdown.Split('\n'))
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                isCode = !isCode;
                continue;
            }

            text.Append(
                isCode ? "    " + line : line.TrimStart('#').Replace("`", "", StringComparison.Ordinal).TrimStart()
            );
            text.Append('\n');
        }

        return text.ToString().Trim();
    }
}
