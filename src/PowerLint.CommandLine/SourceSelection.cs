using System.Collections.Immutable;
using PowerLint.Frontend;

namespace PowerLint.CommandLine;

/// <summary>Which sources to read, and where to look for their configuration.</summary>
/// <param name="Database">The compile database or its folder, or null.</param>
/// <param name="Files">The files, absolute.</param>
/// <param name="Folder">The folder to look for the configuration from.</param>
internal sealed record SourceSelection(string? Database, ImmutableArray<string> Files, string Folder)
{
    /// <summary>Whether folders were named, of which nobody says how they are compiled.</summary>
    internal bool IsGuessed { get; private init; }

    private const string DatabaseName = "compile_commands.json";

    /// <summary>What the request means. Without files and -p, a database in the working directory is taken.</summary>
    internal static SourceSelection From(FirmwareRequest request, CommandSession session)
    {
        // Whatever is no option falls to the files: a mistyped option must not be looked for on the disk.
        if (request.Files.FirstOrDefault(file => file.StartsWith('-')) is { } mistyped)
        {
            throw UsageException.Unknown("option", mistyped, request.KnownOptions, "Compiler flags go after --.");
        }

        ImmutableArray<string> files = [.. request.Files.Select(session.FullPath)];
        var database = request.Database is { } given ? session.FullPath(given) : null;
        if (database is null && files.IsEmpty)
        {
            var here = session.FullPath(DatabaseName);
            database = File.Exists(here)
                ? here
                : throw new UsageException(
                    $"nothing to read: name C files or their folder, or a compile database with -p; there is no {DatabaseName} in this folder"
                );
        }

        if (database is not null && !request.CompilerFlags.IsEmpty)
        {
            throw new UsageException("flags after -- go with files that no database lists: leave out -p, or the flags");
        }

        var isGuessed = database is null && files.Any(Directory.Exists);
        if (isGuessed)
        {
            files = [.. files.SelectMany(SourcesOf)];
        }

        foreach (var (file, index) in files.Select((file, index) => (file, index)))
        {
            if (!File.Exists(file))
            {
                throw new UsageException(
                    Directory.Exists(file)
                        ? $"{request.Files[index]}: this is a folder; with -p, name files that the database lists"
                        : $"{(index < request.Files.Length ? request.Files[index] : file)}: no such file"
                );
            }
        }

        var folder =
            !files.IsEmpty ? Path.GetDirectoryName(files[0])!
            : Directory.Exists(database) ? database
            : Path.GetDirectoryName(database!)!;
        return new SourceSelection(database, files, folder) { IsGuessed = isGuessed };
    }

    private static IEnumerable<string> SourcesOf(string path)
    {
        if (!Directory.Exists(path))
        {
            return [path];
        }

        var sources = SourceTree.SourcesIn(path);
        return sources.Count > 0
            ? sources
            : throw new UsageException($"{path}: no C files in this folder, or in those below it");
    }

    /// <summary>The configuration that goes with them.</summary>
    internal Settings ReadSettings(FirmwareRequest request, CommandSession session)
    {
        if (request.Configuration is { } given)
        {
            return SettingsFile.Read(session.FullPath(given), given);
        }

        var found = SettingsFile.FindUpwards(Folder);
        return found is null
            ? Settings.None
            : SettingsFile.Read(found, new Reports.ReportPaths(session.Console.WorkingDirectory).Show(found));
    }
}
