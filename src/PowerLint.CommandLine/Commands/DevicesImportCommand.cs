using System.CommandLine;
using PowerLint.Devices;

namespace PowerLint.CommandLine;

/// <summary><c>powerlint devices import</c>: a skeleton of a family file from a CMSIS-SVD file.</summary>
internal static class DevicesImportCommand
{
    // Past these, the flaws of a file repeat each other.
    private const int MostNotices = 20;

    internal static Command Build(CommandSession session)
    {
        var file = new Argument<string>("FILE.svd") { Description = "A register description in CMSIS-SVD form" };
        var output = new Option<string?>("--output")
        {
            Description = "The device file to write, instead of standard output; its name becomes the family's",
            HelpName = "FILE.yaml",
        };
        var command = new Command(
            "import",
            "Write a skeleton of a device file: registers and interrupts as a CMSIS-SVD file has them, the rest to fill in"
        )
        {
            file,
            output,
        };
        command.SetAction(parsed => Run(session, parsed.GetValue(file)!, parsed.GetValue(output)));
        return command;
    }

    private static int Run(CommandSession session, string file, string? output)
    {
        var skeleton = Import(session, file, output is null ? null : Path.GetFileNameWithoutExtension(output));
        session.WriteReport(output, (writer, _) => writer.Write(skeleton.Text));
        var error = session.Console.Error;
        foreach (var notice in skeleton.Notices.Take(MostNotices))
        {
            error.WriteLine($"powerlint: {notice}");
        }

        if (skeleton.Notices.Length > MostNotices)
        {
            error.WriteLine($"powerlint: and {skeleton.Notices.Length - MostNotices} more of that kind");
        }

        error.WriteLine(
            $"powerlint: {skeleton.Registers} registers, {skeleton.Interrupts} interrupts. Left to fill in:"
        );
        foreach (var missing in skeleton.Missing)
        {
            error.WriteLine($"powerlint:   {missing}");
        }

        return ExitStatus.Clean;
    }

    private static SvdSkeleton Import(CommandSession session, string file, string? family)
    {
        try
        {
            return SvdImport.Import(session.FullPath(file), file, family);
        }
        catch (DeviceModelException exception)
        {
            throw new UsageException(exception.Message);
        }
    }
}
