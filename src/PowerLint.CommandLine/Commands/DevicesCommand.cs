using System.CommandLine;
using PowerLint.Reports;

namespace PowerLint.CommandLine;

/// <summary><c>powerlint devices</c>: lists the models, or shows one.</summary>
internal static class DevicesCommand
{
    internal static Command Build(CommandSession session)
    {
        var name = new Argument<string?>("NAME")
        {
            Description = "The part to show, as its compiler names it",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var command = new Command("devices", "List the device models, or show what one says of its part") { name };
        command.Subcommands.Add(DevicesImportCommand.Build(session));
        command.SetAction(parsed => Run(session, parsed.GetValue(name)));
        return command;
    }

    private static int Run(CommandSession session, string? name)
    {
        var catalog = DeviceChoice.OpenCatalog();
        if (name is null)
        {
            session.WriteReport(
                path: null,
                (writer, isTerminal) =>
                    DeviceTextWriter.WriteList(catalog.Families, TextConsole.Over(writer, isTerminal))
            );
            return ExitStatus.Clean;
        }

        _ = DeviceChoice.Named(catalog, name, Settings.None);
        var device = DeviceChoice.Load(catalog, name);
        session.WriteReport(
            path: null,
            (writer, isTerminal) => new DeviceTextWriter(device, TextConsole.Over(writer, isTerminal)).Write()
        );
        return ExitStatus.Clean;
    }
}
