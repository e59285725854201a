using System.Collections.Immutable;
using PowerLint.CommandLine;
using PowerLint.Devices;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.OracleTests;

/// <summary>Checks a reference firmware, or a mutant of it, the way the command line does.</summary>
internal static class MutantRun
{
    private static readonly DeviceCatalog Catalog = DeviceCatalog.Open(RepositoryRoot.Combine("devices"));

    /// <summary>The findings of a firmware with a statement altered, or of the firmware itself.</summary>
    public static ImmutableArray<Finding> Of(string name, Mutation? mutation, CancellationToken cancellation)
    {
        var original = FolderOf(name);
        var folder = Directory.CreateTempSubdirectory("powerlint-mutant-").FullName;
        try
        {
            foreach (var file in Directory.EnumerateFiles(original))
            {
                var copy = Path.Combine(folder, Path.GetFileName(file));
                if (mutation is not null && Path.GetFileName(file) == mutation.File)
                {
                    File.WriteAllText(copy, mutation.Apply(File.ReadAllText(file)));
                }
                else
                {
                    File.Copy(file, copy);
                }
            }

            return Check(folder, cancellation);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Where a reference firmware lies.</summary>
    public static string FolderOf(string name) => RepositoryRoot.Combine(["tests", "families", .. name.Split('/')]);

    private static ImmutableArray<Finding> Check(string folder, CancellationToken cancellation)
    {
        var firmware = FirmwareCase.Load(folder, ruleId: null);
        var session = new CommandSession(
            new QuietConsole(folder),
            firmware.Header.CommandLine(Catalog.Load(firmware.Header.Device)),
            cancellation
        );
        var run = FirmwareRun.Start(
            new FirmwareRequest(null, null, null, firmware.Files, session.CompilerFlags, []),
            session
        );
        var report = run.Check(cancellation);
        var errors = report.Notices.Where(notice => notice.IsIncomplete).Select(notice => notice.Message).ToArray();
        return errors.Length == 0
            ? report.Findings
            : throw new InvalidOperationException($"{folder}: {string.Join("; ", errors)}");
    }
}

/// <summary>A terminal that nobody reads.</summary>
internal sealed class QuietConsole(string folder) : IConsole
{
    public TextWriter Output => TextWriter.Null;

    public TextWriter Error => TextWriter.Null;

    public bool IsOutputTerminal => false;

    public bool IsErrorTerminal => false;

    public string WorkingDirectory => folder;

    public string? CacheFolder => null;
}
