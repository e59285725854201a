using PowerLint.Testing;

namespace PowerLint.OracleTests;

/// <summary>A program of <c>tests/states</c>: a C file, or a folder of C files whose <c>main.c</c> carries the header comment.</summary>
internal static class StateProgram
{
    /// <summary>Where they lie.</summary>
    public static string Folder { get; } = RepositoryRoot.Combine("tests", "states");

    /// <summary>All programs, by name.</summary>
    public static IReadOnlyList<Firmware> All { get; } =
    [.. Directory.EnumerateFileSystemEntries(Folder).OrderBy(path => path, StringComparer.Ordinal).Select(Load)];

    private static Firmware Load(string path)
    {
        var isFolder = Directory.Exists(path);
        var main = isFolder ? Path.Combine(path, "main.c") : path;
        var header = File.ReadLines(main).TakeWhile(line => line.StartsWith("//", StringComparison.Ordinal)).ToArray();
        string[] files = isFolder
            ? [.. Directory.EnumerateFiles(path, "*.c").OrderBy(file => file, StringComparer.Ordinal)]
            : [path];
        return new Firmware(
            Path.GetFileNameWithoutExtension(path),
            Value(header, "device") ?? throw new InvalidOperationException($"{main} has no '// device:' line."),
            Value(header, "flags")?.Split(' ', StringSplitOptions.RemoveEmptyEntries) ?? [],
            files
        );
    }

    private static string? Value(IEnumerable<string> header, string key) =>
        header
            .Where(line => line.StartsWith($"// {key}: ", StringComparison.Ordinal))
            .Select(line => line[(key.Length + 5)..].Trim())
            .FirstOrDefault();
}
