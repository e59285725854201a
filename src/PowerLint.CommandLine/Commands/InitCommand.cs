using System.CommandLine;

namespace PowerLint.CommandLine;

/// <summary><c>powerlint init</c>: writes a first configuration.</summary>
internal static class InitCommand
{
    internal static Command Build(CommandSession session)
    {
        var folder = new Argument<string?>("FOLDER")
        {
            Description = "The firmware's folder (default: this one)",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var device = new Option<string>("--device", "-d")
        {
            Description = "The part, as its compiler names it (default: what the build's files name)",
            HelpName = "NAME",
        };
        var force = new Option<bool>("--force") { Description = "Write over a configuration that is there" };
        var command = new Command("init", $"Look at the firmware's folder and write {SettingsFile.Name}")
        {
            folder,
            device,
            force,
        };
        command.SetAction(parsed =>
            Run(session, parsed.GetValue(folder) ?? ".", parsed.GetValue(device), parsed.GetValue(force))
        );
        return command;
    }

    private static int Run(CommandSession session, string given, string? device, bool force)
    {
        var folder = session.FullPath(given);
        if (!Directory.Exists(folder))
        {
            throw new UsageException($"{given}: no such folder");
        }

        var file = Path.Combine(folder, SettingsFile.Name);
        if (File.Exists(file) && !force)
        {
            throw new UsageException(
                $"{SettingsFile.Name} is there already: change it by hand, or write over it with --force"
            );
        }

        var catalog = DeviceChoice.OpenCatalog();
        var found = TreeFindings.In(folder, catalog);
        if (DeviceChoice.Named(catalog, device, Settings.None) is { } named)
        {
            found = found with { Device = named, NamedIn = null, UnknownPart = null };
        }

        session.WriteReport(file, (writer, _) => writer.Write(SettingsDraft.Write(found, folder)));
        Tell(session.Console.Output, found, folder, given);
        return ExitStatus.Clean;
    }

    private static void Tell(TextWriter output, TreeFindings found, string folder, string given)
    {
        output.Write($"Wrote {SettingsFile.Name}\n");
        output.Write(
            found switch
            {
                { Device: { } device } => $"  part      {device}\n",
                { UnknownPart: { } part } =>
                    $"  part      {part}, of which there is no model: choose a near one with --device\n",
                _ => "  part      not found: give --device NAME to check, or write device: into the file\n",
            }
        );
        var prefix = given is "." ? "" : given.TrimEnd('/') + "/";
        output.Write(
            found switch
            {
                { Database: { } database } =>
                    $"  build     {Path.GetRelativePath(folder, database)}\nNext: powerlint check -p {prefix}{Shown(Path.GetRelativePath(folder, Path.GetDirectoryName(database)!))}\n",
                { SourceFolder: { } sources } =>
                    $"  build     no compile_commands.json: include folders are guessed\nNext: powerlint check {prefix}{Shown(sources)}\n",
                _ => "  build     no compile_commands.json, and no C files\n",
            }
        );
    }

    private static string Shown(string path) => path is "." ? "." : path;
}
