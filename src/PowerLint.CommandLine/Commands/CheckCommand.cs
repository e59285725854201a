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
        var input = FirmwareInput.Open(request, session);
        var isPlain = baseline is null && fixes == FixMode.Report;
        var kept = isPlain
            ? KeptReports.Of(input, session, isTerminal: output is null && session.Console.IsOutputTerminal)
            : null;
        if (kept?.Find(FindInput(input, session)) is { } same)
        {
            input.Progress.End();
            return Deliver(same, output, session);
        }

        using var fixing = new FixRun();
        var read = input.Read(session.Cancellation);
        var runs = FirmwareRun.StartAll(input, read, session);
        if (fixes != FixMode.Report && runs.Length > 1)
        {
            throw new UsageException(
                $"fixes are for one image: choose one with --image: {string.Join(", ", runs.Select(run => run.Image))}"
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

        var report = new KeptReport(
            Text(reports, format, output is null && session.Console.IsOutputTerminal),
            Messages(runs, isBeside: output is not null || !string.Equals(format, "text", StringComparison.Ordinal)),
            // The numbers of the statuses are in order of weight.
            reports.Max(report => Status(report, failOn))
        );
        kept?.Keep(read.Input, report);
        return Deliver(report, output, session);
    }

    private static byte[]? FindInput(FirmwareInput input, CommandSession session) =>
        input.Progress.Stage("looking for what has changed", () => input.Reading.FindInput(session.Cancellation));

    private static int Deliver(KeptReport report, string? output, CommandSession session)
    {
        session.WriteReport(output, (writer, _) => writer.Write(report.Text));
        session.Console.Error.Write(report.Messages);
        return report.Status;
    }

    private static string Text(CheckReport[] reports, string format, bool isTerminal)
    {
        using var writer = new StringWriter { NewLine = "\n" };
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

        return writer.ToString();
    }

    // A report that goes elsewhere still says on the terminal why it may be incomplete.
    private static string Messages(IEnumerable<FirmwareRun> runs, bool isBeside)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        foreach (var run in isBeside ? runs : [])
        {
            run.PrintNotices(writer);
        }

        return writer.ToString();
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
