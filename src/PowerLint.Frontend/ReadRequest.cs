namespace PowerLint.Frontend;

/// <summary>What to read: files with flags, or a compile database (and then, where files are given too, only those of it).</summary>
public sealed record ReadRequest
{
    /// <summary>C files, relative to <see cref="WorkingDirectory"/>.</summary>
    public IReadOnlyList<string> Files { get; init; } = [];

    /// <summary>Compiler flags for <see cref="Files"/>; the first may be the compiler's name.</summary>
    public IReadOnlyList<string> Flags { get; init; } = [];

    /// <summary>A compile database, or the folder that holds <c>compile_commands.json</c>; null for files with flags.</summary>
    public string? Database { get; init; }

    /// <summary>The device that the firmware runs on, where it is known: names the target when the flags do not.</summary>
    public string? DeviceName { get; init; }

    /// <summary>Whether to guess the folders that hold what <see cref="Files"/> include, where no flags name them.</summary>
    public bool GuessesIncludeFolders { get; init; }

    /// <summary>Further system header folders.</summary>
    public IReadOnlyList<string> HeaderFolders { get; init; } = [];

    /// <summary>Whether cross compilers found on the search path may be asked where their headers lie.</summary>
    public bool AsksCompilers { get; init; } = true;

    /// <summary>The folder to keep lowered units in, and to take unchanged ones from; null where nothing is to be kept.</summary>
    public string? CacheFolder { get; init; }

    /// <summary>Told after each file how far the reading is, from any thread; null where nobody asks.</summary>
    public Action<ReadProgress>? Progress { get; init; }

    /// <summary>
    /// Globs for further compilers that may be asked: over names found on the search path, or over full paths where they hold a slash.
    /// </summary>
    public IReadOnlyList<string> AllowedDrivers { get; init; } = [];

    /// <summary>What relative paths are relative to.</summary>
    public string WorkingDirectory { get; init; } = Environment.CurrentDirectory;
}
