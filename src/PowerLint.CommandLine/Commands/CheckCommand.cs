using System.CommandLine;
using PowerLint.Reports;
using PowerLint.Rules;

namespace PowerLint.CommandLine;

/// <summary><c>powerlint check</c>: finds what wastes current.</summary>
internal static class CheckCommand
{
    private static readonly string[] FailLevels = ["warning", "note", "error", "none"];

    internal static Command Build(CommandSession session)
    {
        var firmware = new FirmwareOptions();
        var report = new ReportOptions("text", "sarif", "json");
        var failOn = new Option<string>("--fail-on")
        {
            Description = "The lowest level of findings that makes the exit status 1",
            DefaultValueFactory = _ => FailLevels[0],
        };
        failOn.AcceptOnlyFromAmong(FailLevels);

        var baseline = new BaselineOption();
        var fixes = new FixOptions();
        var command = new Command("check", "Check firmware for what keeps its supply current up");
        firmware.AddTo(command);
        report.AddTo(command);
        command.Options.Add(failOn);
        baseline.AddTo(command);
        fixes.AddTo(command);
        command.SetAction(parsed =>
            Run(
                session,
                firmware.Read(parsed, session),
                report.Format(parsed),
                report.Output(parsed),
                parsed.GetRequiredValue(failOn),
                baseline.Read(parsed, session),
                fixes.Read(parsed)
            )
        );
        return command;
    }

    private static int Run(
        CommandSession session,
        FirmwareRequest request,
        string format,
        string? output,
        string failOn,
        SarifBaseline? baseline,
        FixMode fixes
    )
    {
        using var fixing = new FixRun();
        var runs = FirmwareRun.StartAll(request, session);
        if ((baseline is not null || fixes != FixMode.Report) && runs.Length > 1)
        {
            throw new UsageException(
                $"{(baseline is null ? "fixes are for" : "a baseline is of")} one image: choose one with --image: {string.Join(", ", runs.Select(run => run.Image))}"
            );
        }

        CheckReport[] reports = [.. runs.Select(run => run.Check(session.Cancellation))];
        reports = [.. reports.Select(report => report with { Baseline = baseline?.Compare(report) })];
        if (fixes == FixMode.Show)
        {
            session.WriteReport(output, (writer, _) => fixing.Show(reports[0], runs[0], writer));
            return Status(reports[0], failOn);
        }

        if (fixes == FixMode.Apply)
        {
            reports = [fixing.Apply(reports[0], runs[0], session.Console.Error)];
        }

        session.WriteReport(
            output,
            (writer, isTerminal) =>
            {
                switch (format)
                {
                    case "sarif":
                        SarifReport.Write(reports, writer);
                        break;
                    case "json" when reports.Length > 1:
                        FindingJsonWriter.Write(reports, writer);
                        break;
                    case "json":
                        FindingJsonWriter.Write(reports[0], writer);
                        break;
                    default:
                        foreach (var report in reports)
                        {
                            new FindingTextWriter(report, TextConsole.Over(writer, isTerminal)).Write();
                        }

                        break;
                }
            }
        );

        // A report that goes elsewhere still says on the terminal why it may be incomplete.
        if (output is not null || !string.Equals(format, "text", StringComparison.Ordinal))
        {
            foreach (var run in runs)
            {
                run.PrintNotices(session.Console.Error);
            }
        }

        // The numbers of the statuses are in order of weight.
        return reports.Max(report => Status(report, failOn));
    }

    private static int Status(CheckReport report, string failOn)
    {
        if (report.IsIncomplete)
        {
            return ExitStatus.Incomplete;
        }

        Level? lowest = failOn switch
        {
            "note" => Level.Note,
            "warning" => Level.Warning,
            "error" => Level.Error,
            _ => null,
        };
        return lowest is { } level && report.Counting.Any(finding => finding.Level >= level)
            ? ExitStatus.Findings
            : ExitStatus.Clean;
    }
}
