using System.CommandLine;
using PowerLint.Analysis;
using PowerLint.Devices;
using PowerLint.Reports;

namespace PowerLint.CommandLine;

/// <summary><c>powerlint state</c>: prints the register state at each resting point.</summary>
internal static class StateCommand
{
    internal static Command Build(CommandSession session)
    {
        var firmware = new FirmwareOptions();
        var report = new ReportOptions("text", "json");
        var all = new Option<bool>("--all") { Description = "Show registers that still hold their reset value too" };
        var explain = new Option<string>("--explain")
        {
            Description = "Print the writes that decided one register or field",
            HelpName = "REGISTER.FIELD",
        };

        var command = new Command("state", "Print what every register holds where the CPU rests");
        firmware.AddTo(command);
        report.AddTo(command);
        command.Options.Add(all);
        command.Options.Add(explain);
        command.SetAction(parsed =>
            Run(
                session,
                firmware.Read(parsed, session),
                string.Equals(report.Format(parsed), "json", StringComparison.Ordinal),
                report.Output(parsed),
                parsed.GetValue(all),
                parsed.GetValue(explain)
            )
        );
        return command;
    }

    private static int Run(
        CommandSession session,
        FirmwareRequest request,
        bool json,
        string? output,
        bool all,
        string? explain
    )
    {
        if (json && explain is not null)
        {
            throw new UsageException("--explain prints text: leave out --format json");
        }

        var runs = FirmwareRun.StartAll(request, session);
        foreach (var device in runs.Select(run => run.Device).OfType<DeviceModel>())
        {
            _ = explain is null ? null : Find(device, explain);
        }

        (string? Image, AnalysisResult Result)[] images =
        [
            .. runs.Select(run => (run.Image, Result: run.Analyze(session.Cancellation)))
                .Where(image => image.Result is not null)
                .Select(image => (image.Image, image.Result!)),
        ];
        if (images.Length > 0)
        {
            session.WriteReport(
                output,
                (writer, isTerminal) =>
                {
                    if (json)
                    {
                        WriteJson(images, runs[0].Paths, writer);
                    }
                    else
                    {
                        WriteText(images, runs[0].Paths, writer, isTerminal, all, explain);
                    }
                }
            );
        }

        foreach (var run in runs)
        {
            run.PrintNotices(session.Console.Error);
        }

        return images.Length < runs.Length || runs.Any(run => run.IsIncomplete)
            ? ExitStatus.Incomplete
            : ExitStatus.Clean;
    }

    private static void WriteJson((string? Image, AnalysisResult Result)[] images, ReportPaths paths, TextWriter writer)
    {
        if (images is [var only])
        {
            StateJsonWriter.Write(only.Result, paths, writer);
        }
        else
        {
            StateJsonWriter.Write(images, paths, writer);
        }
    }

    private static void WriteText(
        (string? Image, AnalysisResult Result)[] images,
        ReportPaths paths,
        TextWriter writer,
        bool isTerminal,
        bool all,
        string? explain
    )
    {
        foreach (var (image, result) in images)
        {
            var text = new StateTextWriter(result, paths, TextConsole.Over(writer, isTerminal))
            {
                Image = images.Length > 1 ? image : null,
            };
            if (explain is null)
            {
                text.Write(all);
            }
            else
            {
                text.Explain(Find(result.Device, explain));
            }
        }
    }

    private static FieldReference Find(DeviceModel device, string name) =>
        FieldNames.Find(device, name)
        ?? throw new UsageException(
            $"--explain {name}: {device.Name} has no such register or field"
                + NearestNames.Hint(name, FieldNames.All(device))
        );
}
