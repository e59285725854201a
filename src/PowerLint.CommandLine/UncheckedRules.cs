using PowerLint.Devices;
using PowerLint.Reports;
using PowerLint.Rules;

namespace PowerLint.CommandLine;

/// <summary>Says of rules, once, that they could not be checked, because the device's model lacks what they ask.</summary>
internal static class UncheckedRules
{
    /// <summary>A notice for each section that is lacking, with the rules that are switched on and need it.</summary>
    internal static IEnumerable<Notice> Of(DeviceModel device, RuleSettings settings) =>
        RuleCatalog
            .All.Where(rule =>
                rule.Needs.Length > 0
                && settings.IsOn(rule.Id)
                && !device.Sections.Contains(rule.Needs, StringComparer.Ordinal)
            )
            .GroupBy(rule => rule.Needs, StringComparer.Ordinal)
            .OrderBy(rules => rules.Key, StringComparer.Ordinal)
            .Select(rules => new Notice(
                NoticeLevel.Note,
                "rule-not-checked",
                $"{string.Join(" and ", rules.Select(rule => rule.Id))}: not checked on {device.Name}, whose model does not say what "
                    + $"{rules.Key} it has. Add the section '{rules.Key}' to devices/{device.Family}.yaml.",
                Range: null,
                IsIncomplete: false
            ));
}
