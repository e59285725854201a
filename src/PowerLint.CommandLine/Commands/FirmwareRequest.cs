using System.Collections.Immutable;

namespace PowerLint.CommandLine;

/// <summary>Which firmware on which device, as asked for on the command line.</summary>
/// <param name="Device">The part, or null to find out.</param>
/// <param name="Configuration">The configuration file, or null to look for one.</param>
/// <param name="Database">The compile database or its folder, or null.</param>
/// <param name="Files">The sources.</param>
/// <param name="CompilerFlags">Flags for sources that no database knows.</param>
/// <param name="KnownOptions">The command's options, to tell what a mistyped one may have meant.</param>
internal sealed record FirmwareRequest(
    string? Device,
    string? Configuration,
    string? Database,
    ImmutableArray<string> Files,
    ImmutableArray<string> CompilerFlags,
    ImmutableArray<string> KnownOptions
)
{
    /// <summary>Globs for further cross compilers that may be asked for their header folders.</summary>
    internal ImmutableArray<string> AllowedDrivers { get; init; } = [];

    /// <summary>Further header folders.</summary>
    internal ImmutableArray<string> HeaderFolders { get; init; } = [];

    /// <summary>The image to look at, or null for all that there are.</summary>
    internal string? Image { get; init; }

    /// <summary>Whether units may come from the cache and go into it.</summary>
    internal bool UsesCache { get; init; } = true;

    /// <summary>Whether to say how long each stage took.</summary>
    internal bool IsVerbose { get; init; }
}
