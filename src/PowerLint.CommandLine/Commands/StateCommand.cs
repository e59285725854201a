using System.CommandLine;
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

        var run = FirmwareRun.Start(request, session);
        var field = explain is null || run.Device is null ? null : Find(run.Device, explain);
        if (run.Analyze(session.Cancellation) is not { } result)
        {
            run.PrintNotices(session.Console.Error);
            return ExitStatus.Incomplete;
        }

        session.WriteReport(
            output,
            (writer, isTerminal) =>
            {
                if (json)
                {
                    StateJsonWriter.Write(result, run.Paths, writer);
                    return;
                }

                var text = new StateTextWriter(result, run.Paths, TextConsole.Over(writer, isTerminal));
                if (field is null)
                {
                    text.Write(all);
                }
                else
                {
                    text.Explain(field);
                }
            }
        );
        run.PrintNotices(session.Console.Error);
        return run.IsIncomplete ? ExitStatus.Incomplete : ExitStatus.Clean;
    }

    private static FieldReference Find(DeviceModel device, string name) =>
        FieldNames.Find(device, name)
        ?? throw new UsageException(
            $"--explain {name}: {device.Name} has no such register or field"
                + NearestNames.Hint(name, FieldNames.All(device))
        );
}
