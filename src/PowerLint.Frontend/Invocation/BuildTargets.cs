using System.Text.RegularExpressions;

namespace PowerLint.Frontend;

/// <summary>
/// The target that an object file belongs to, from where the build puts it: CMake and Meson give each target a folder; other builds
/// are told apart where they compile one source more than once.
/// </summary>
internal static partial class BuildTargets
{
    /// <summary>The targets of some commands, in their order; null where nothing tells.</summary>
    public static IReadOnlyList<string?> Of(IReadOnlyList<CompileCommand> commands)
    {
        var named = commands.Select(command => Named(command.Output)).ToArray();
        var repeated = commands
            .GroupBy(command => command.File, StringComparer.Ordinal)
            .Any(same => same.Select(command => command.Output).Distinct(StringComparer.Ordinal).Count() > 1);
        return [.. commands.Select((command, i) => named[i] ?? (repeated ? Folder(command) : null))];
    }

    private static string? Named(string? output) =>
        output is not null && TargetFolder().Match(output.Replace('\\', '/')) is { Success: true } match
            ? match.Groups["target"].Value
            : null;

    // The folder of the object file, without the folders that it shares with its source.
    private static string? Folder(CompileCommand command)
    {
        if (command.Output is null)
        {
            return null;
        }

        var objects = Path.GetDirectoryName(Path.GetFullPath(Path.Combine(command.Directory, command.Output)))!;
        var sources = Path.GetDirectoryName(command.File)!;
        while (
            Path.GetFileName(objects) is { Length: > 0 } last
            && string.Equals(last, Path.GetFileName(sources), StringComparison.Ordinal)
        )
        {
            objects = Path.GetDirectoryName(objects)!;
            sources = Path.GetDirectoryName(sources)!;
        }

        return Path.GetRelativePath(command.Directory, objects);
    }

    [GeneratedRegex(
        @"(?:^|/)CMakeFiles/(?<target>[^/]+)\.dir/|(?:^|/)(?<target>[^/]+)\.p/",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex TargetFolder();
}
