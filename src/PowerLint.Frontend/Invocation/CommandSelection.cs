namespace PowerLint.Frontend;

/// <summary>Chooses which files to read and with which commands.</summary>
internal static class CommandSelection
{
    public static SelectedCommands Select(ReadRequest request, NoticeList notices)
    {
        var commands = request.Database is { } database
            ? FromDatabase(Path.GetFullPath(Path.Combine(request.WorkingDirectory, database)), request)
            : FromFiles(request, notices);
        var usable = new List<CompileCommand>();
        var seen = new HashSet<(string File, string? Target)>();
        var vectors = new List<string>();
        var listed = commands.ToList();
        var targets = BuildTargets.Of(listed);
        foreach (var command in listed.Select((command, i) => command with { Target = targets[i] }))
        {
            if (command.IsAssembly)
            {
                notices.Add(
                    "assembly-not-read",
                    "Assembly files were not analysed; only the handlers that vector tables in them name were taken from them",
                    command.File
                );
                foreach (var name in VectorTables.Read(command.File))
                {
                    if (!vectors.Contains(name, StringComparer.Ordinal))
                    {
                        vectors.Add(name);
                    }
                }
            }
            else if (!command.IsC)
            {
                notices.Add("not-c", "Files that are not C were not read", command.File);
            }
            else if (seen.Add((command.File, command.Target)))
            {
                usable.Add(command);
            }
            else
            {
                notices.Add(
                    "listed-twice",
                    "Files that are compiled more than once: their first command counts",
                    command.File
                );
            }
        }

        if (usable.Count == 0)
        {
            throw request.Database is null
                ? new ReadException(
                    ReadFailureKind.NothingUsable,
                    request.WorkingDirectory,
                    line: null,
                    "No C file was given. Name the files, or a compile database with -p."
                )
                : new ReadException(
                    ReadFailureKind.DatabaseEmpty,
                    request.Database,
                    line: null,
                    $"{request.Database} lists no C file. Build the firmware once from clean so that the build records its commands."
                );
        }

        foreach (var command in usable)
        {
            if (!File.Exists(command.File))
            {
                throw new ReadException(
                    ReadFailureKind.FileMissing,
                    command.File,
                    line: null,
                    request.Database is null
                        ? $"There is no file {command.File}."
                        : $"{request.Database} lists {command.File}, which does not exist. Build again to renew the database."
                );
            }
        }

        return new SelectedCommands(usable, vectors);
    }

    private static IEnumerable<CompileCommand> FromDatabase(string database, ReadRequest request)
    {
        var all = CompileDatabase.Load(database);
        if (request.Files.Count == 0)
        {
            return all;
        }

        var wanted = request
            .Files.Select(file => Path.GetFullPath(Path.Combine(request.WorkingDirectory, file)))
            .ToHashSet(StringComparer.Ordinal);
        foreach (
            var file in wanted
                .Where(file => !all.Any(command => string.Equals(command.File, file, StringComparison.Ordinal)))
                .Order(StringComparer.Ordinal)
        )
        {
            throw new ReadException(
                ReadFailureKind.FileMissing,
                file,
                line: null,
                $"{database} has no command for {file}."
            );
        }

        return all.Where(command => wanted.Contains(command.File));
    }

    private static IEnumerable<CompileCommand> FromFiles(ReadRequest request, NoticeList notices)
    {
        var named = request.Flags.Count > 0 && !request.Flags[0].StartsWith('-') && !request.Flags[0].StartsWith('@');
        var compiler = named ? request.Flags[0] : null;
        var flags = named ? request.Flags.Skip(1).ToArray() : request.Flags;
        string[] files =
        [
            .. request.Files.Select(file => Path.GetFullPath(Path.Combine(request.WorkingDirectory, file))),
        ];
        if (request.GuessesIncludeFolders)
        {
            var folders = SourceTree.IncludeFolders(files);
            flags = [.. flags, .. folders.SelectMany(folder => (string[])["-I", folder])];
            if (folders.Count > 0)
            {
                foreach (var folder in folders)
                {
                    notices.Add(
                        "include-folders-guessed",
                        "Include folders were guessed; with a compile database they would be known",
                        Path.GetRelativePath(request.WorkingDirectory, folder)
                    );
                }
            }
        }

        return files.Select(file => new CompileCommand(
            Path.GetFullPath(request.WorkingDirectory),
            file,
            compiler,
            flags
        ));
    }
}

/// <summary>What is to be read.</summary>
/// <param name="Commands">The files that can be parsed.</param>
/// <param name="Vectors">The functions that vector tables in assembly files name.</param>
internal sealed record SelectedCommands(IReadOnlyList<CompileCommand> Commands, IReadOnlyList<string> Vectors);
