using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using PowerLint.Devices;
using PowerLint.Frontend;

namespace PowerLint.CommandLine;

/// <summary>What a look at a firmware's folder tells of its build.</summary>
/// <param name="Database">The compile database, or null.</param>
/// <param name="Device">The part that the build names, where there is a model of it; else null.</param>
/// <param name="UnknownPart">The part that the build names, where there is no model of it; else null.</param>
/// <param name="NamedIn">The file that names the part.</param>
/// <param name="CpuHertz">The clock that the build names, or null.</param>
/// <param name="SourceFolder">The folder of the sources, where there is no database; null where there are none.</param>
/// <param name="Foreign">Folders of other people's code.</param>
internal sealed partial record TreeFindings(
    string? Database,
    string? Device,
    string? UnknownPart,
    string? NamedIn,
    long? CpuHertz,
    string? SourceFolder,
    ImmutableArray<string> Foreign
)
{
    private const int MostBytes = 4 * 1024 * 1024;

    private static readonly string[] BuildFiles =
    [
        "compile_commands.json",
        "Makefile",
        "makefile",
        "GNUmakefile",
        "*.mk",
        "CMakeLists.txt",
        "*.cmake",
        "meson.build",
        "platformio.ini",
        "*.cross",
    ];

    private static readonly string[] ForeignNames = ["third_party", "third-party", "external", "vendor", "vendors"];

    /// <summary>Looks at a folder.</summary>
    internal static TreeFindings In(string folder, DeviceCatalog catalog)
    {
        var files = Candidates(folder).ToArray();
        var database = Array.Find(files, file => Path.GetFileName(file) is "compile_commands.json");
        string? unknown = null;
        string? device = null;
        string? namedIn = null;
        long? hertz = null;
        foreach (var file in files)
        {
            var text = Read(file);
            foreach (Match match in Part().Matches(text))
            {
                var part = match.Groups["part"].Value.ToLowerInvariant();
                if (device is null && catalog.Has(part))
                {
                    (device, namedIn) = (part, file);
                }
                else if (device is null)
                {
                    unknown ??= part;
                }
            }

            hertz ??=
                Clock().Match(text) is { Success: true } clock
                && long.TryParse(
                    clock.Groups["hertz"].ValueSpan,
                    NumberStyles.None,
                    CultureInfo.InvariantCulture,
                    out var value
                )
                    ? value
                    : null;
        }

        return new TreeFindings(
            database,
            device,
            device is null ? unknown : null,
            namedIn,
            hertz,
            database is null ? SourceFolderOf(folder) : null,
            [
                .. Directory
                    .EnumerateDirectories(folder)
                    .Select(path => Path.GetFileName(path))
                    .Where(name => ForeignNames.Contains(name, StringComparer.Ordinal))
                    .Order(StringComparer.Ordinal),
            ]
        );
    }

    // The folder itself, and what build systems make below it.
    private static IEnumerable<string> Candidates(string folder) =>
        BuildFiles
            .SelectMany(pattern => Directory.EnumerateFiles(folder, pattern).Order(StringComparer.Ordinal))
            .Concat(
                Directory
                    .EnumerateDirectories(folder)
                    .Order(StringComparer.Ordinal)
                    .SelectMany(below => BuildFiles.SelectMany(pattern => FilesIn(below, pattern)))
            );

    private static IEnumerable<string> FilesIn(string folder, string pattern)
    {
        try
        {
            return Directory.EnumerateFiles(folder, pattern).Order(StringComparer.Ordinal).ToArray();
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private static string Read(string file)
    {
        try
        {
            return new FileInfo(file).Length <= MostBytes ? File.ReadAllText(file) : "";
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return "";
        }
    }

    private static string? SourceFolderOf(string folder)
    {
        var sources = SourceTree.SourcesIn(folder);
        if (sources.Count == 0)
        {
            return null;
        }

        var names = sources.Select(source => Path.GetRelativePath(folder, source).Split('/')).ToArray();
        return
            names.All(parts => parts.Length > 1)
            && names.Select(parts => parts[0]).Distinct(StringComparer.Ordinal).ToArray() is [var only]
            ? only
            : ".";
    }

    // -mmcu=atmega328p, MCU = atmega328p, board_build.mcu = atmega328p, set(MCU atmega328p), -DSTM32L053xx.
    [GeneratedRegex(
        @"(?:-mmcu=|\bMCU\w*""?\s*[:?]?[=\s]\s*""?|\bmcu\s*=\s*|-D(?=STM32|NRF5|__SAM))(?<part>[A-Za-z][A-Za-z0-9_]{4,24})",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 5000
    )]
    private static partial Regex Part();

    [GeneratedRegex(
        @"(?:\b|-D)F_CPU\s*[:?]?[=\s]\s*(?<hertz>[0-9]{4,10})",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 5000
    )]
    private static partial Regex Clock();
}
