using System.Text;
using Microsoft.CodeAnalysis.Sarif;
using PowerLint.Rules;

namespace PowerLint.Reports;

/// <summary>
/// Writes a check as SARIF 2.1.0. The only entry to what needs the SARIF library: a run that writes none does not load it.
/// </summary>
public static class SarifReport
{
    /// <summary>Writes one SARIF log.</summary>
    public static void Write(CheckReport report, TextWriter output) => Write([report], output);

    /// <summary>Writes one SARIF log with a run for each image.</summary>
    public static void Write(IReadOnlyList<CheckReport> reports, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(reports);
        ArgumentNullException.ThrowIfNull(output);
        var log = Log([.. reports]);
        using var bytes = new MemoryStream();
        using (var writer = new StreamWriter(bytes, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\n" })
        {
            log.Save(writer);
        }

        output.Write(Encoding.UTF8.GetString(bytes.ToArray()));
        output.Write('\n');
    }

    /// <summary>The log as the library's object.</summary>
    internal static SarifLog Log(params CheckReport[] reports) =>
        new()
        {
            SchemaUri = new Uri("https://json.schemastore.org/sarif-2.1.0.json"),
            Version = SarifVersion.Current,
            Runs = [.. reports.Select(Run)],
        };

    private static Run Run(CheckReport report)
    {
        var places = new SarifPlaces(report.Paths);
        var results = new SarifResults(report, places);
        return new Run
        {
            Tool = new Tool
            {
                Driver = new ToolComponent
                {
                    Name = "PowerLint",
                    Version = report.ToolVersion,
                    SemanticVersion = report.ToolVersion,
                    Rules = [.. RuleCatalog.All.Select(rule => SarifRules.Describe(rule, report.Device))],
                    Notifications = SarifNotifications.Describe(report.Notices),
                },
            },
            // Tells the runs of one log apart; a slash at the end: the category has no instances of its own.
            AutomationDetails = report.Image is { } image
                ? new RunAutomationDetails { Id = $"powerlint/{image}/" }
                : null,
            ColumnKind = ColumnKind.Utf16CodeUnits,
            OriginalUriBaseIds = places.BaseIds(),
            Invocations =
            [
                new Invocation
                {
                    ExecutionSuccessful = !report.IsIncomplete,
                    ToolExecutionNotifications =
                    [
                        .. report.Notices.Select(notice => SarifNotifications.Write(notice, places)),
                    ],
                },
            ],
            Results =
            [
                .. report.Findings.Select(finding => results.Write(finding, allowedBecause: null)),
                .. report.Allowed.Select(allowed => results.Write(allowed.Finding, allowed.Reason)),
                .. (report.Baseline?.Absent ?? []).Cast<Result>().Select(results.WriteAbsent),
            ],
        };
    }
}
