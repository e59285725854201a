using System.Collections.Immutable;

namespace PowerLint.Testing;

/// <summary>Firmware with expectations in its comments: one C file, or a folder whose C files form one image.</summary>
/// <param name="Name">Path below the tests' folder, for messages.</param>
/// <param name="Header">What it says of itself.</param>
/// <param name="Files">The C files, absolute.</param>
/// <param name="Marks">The expectations.</param>
/// <param name="ComparedRules">The rules whose findings are compared; null for all.</param>
public sealed record FirmwareCase(
    string Name,
    CaseHeader Header,
    ImmutableArray<string> Files,
    ImmutableArray<ExpectationMark> Marks,
    ImmutableArray<string>? ComparedRules
)
{
    /// <summary>The cases in a folder, by name: each C file, and each folder that holds one.</summary>
    public static IEnumerable<string> NamesIn(string folder) =>
        Directory
            .EnumerateFiles(folder, "*.c")
            .Concat(Directory.EnumerateDirectories(folder))
            .Select(path => Path.GetFileName(path))
            .Order(StringComparer.Ordinal);

    /// <summary>Loads a case.</summary>
    /// <param name="path">The C file or folder.</param>
    /// <param name="ruleId">The rule that the case is about, compared unless the header says otherwise; null for all rules.</param>
    public static FirmwareCase Load(string path, string? ruleId)
    {
        var name = Path.GetRelativePath(RepositoryRoot.Path, path).Replace('\\', '/');
        string[] files = Directory.Exists(path)
            ? [.. Directory.EnumerateFiles(path, "*.c").Order(StringComparer.Ordinal)]
            : [path];
        var headers = Directory.Exists(path) ? Directory.EnumerateFiles(path, "*.h") : [];
        var main =
            files.FirstOrDefault(file => string.Equals(Path.GetFileName(file), "main.c", StringComparison.Ordinal))
            ?? files.FirstOrDefault()
            ?? throw new FormatException($"{name}: the folder holds no C file");
        var header = CaseHeader.Read(File.ReadAllText(main), name);
        return new FirmwareCase(
            name,
            header,
            [.. files],
            [.. files.Concat(headers).SelectMany(file => ExpectationComments.Read(File.ReadAllText(file), file))],
            header.Rules is { IsEmpty: true }
                ? ruleId is null
                    ? null
                    : [ruleId]
                : header.Rules
        );
    }
}
