using System.CommandLine;
using PowerLint.Devices;
using PowerLint.Reports;
using PowerLint.Rules;

namespace PowerLint.CommandLine;

/// <summary><c>powerlint explain</c>: prints a rule's page, with the examples of the device's style.</summary>
internal static class ExplainCommand
{
    internal static Command Build(CommandSession session)
    {
        var rule = new Argument<string>("RULE") { Description = "The rule's identifier, as findings give it" };
        var device = new Option<string?>("--device", "-d")
        {
            Description = "The part whose style of example to show (default: from powerlint.yaml, else all examples)",
            HelpName = "NAME",
        };
        var all = new Option<bool>("--all") { Description = "Show the examples of all device styles" };
        var command = new Command("explain", "Explain a rule: what it finds, why it costs, how to mend it")
        {
            rule,
            device,
            all,
        };
        command.SetAction(parsed =>
            Run(session, parsed.GetRequiredValue(rule), parsed.GetValue(device), parsed.GetValue(all))
        );
        return command;
    }

    private static int Run(CommandSession session, string id, string? asked, bool all)
    {
        var rule =
            RuleCatalog.Find(id)
            ?? throw UsageException.Unknown(
                "rule",
                id,
                RuleCatalog.All.Select(known => known.Id),
                "Run 'powerlint rules' for all of them."
            );
        var device = Device(session, asked);
        session.WriteReport(
            path: null,
            (writer, isTerminal) =>
                RuleTextWriter.WritePage(rule, all ? null : device, TextConsole.Over(writer, isTerminal))
        );
        return ExitStatus.Clean;
    }

    private static DeviceModel? Device(CommandSession session, string? asked)
    {
        var file = asked is null ? SettingsFile.FindUpwards(session.Console.WorkingDirectory) : null;
        var settings = file is null
            ? Settings.None
            : SettingsFile.Read(file, new ReportPaths(session.Console.WorkingDirectory).Show(file));
        if (asked is null && settings.Device is null)
        {
            return null;
        }

        var catalog = DeviceChoice.OpenCatalog();
        return DeviceChoice.Load(catalog, DeviceChoice.Named(catalog, asked, settings)!);
    }
}
