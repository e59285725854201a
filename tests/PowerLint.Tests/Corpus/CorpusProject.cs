using System.Formats.Tar;
using System.IO.Compression;
using System.Text.Json;
using PowerLint.Testing;
using YamlDotNet.Serialization;
using YamlDotNet.Serialization.NamingConventions;

namespace PowerLint.Tests;

/// <summary>A firmware of an installed package, as <c>tests/corpus/projects.yaml</c> lists it.</summary>
public sealed class CorpusProject
{
    /// <summary>The folder of the list.</summary>
    public static readonly string Root = RepositoryRoot.Combine("tests", "corpus");

    public string Name { get; set; } = "";

    public string Package { get; set; } = "";

    public string Device { get; set; } = "";

    /// <summary>The build's working directory, below the package's sources.</summary>
    public string Folder { get; set; } = ".";

    public List<string> Files { get; set; } = [];

    /// <summary>Files of our own beside the list, compiled with the others.</summary>
    public List<string> Own { get; set; } = [];

    public List<string> Flags { get; set; } = [];

    /// <summary><c>no model yet</c> where the device cannot be checked.</summary>
    public string? Model { get; set; }

    /// <summary>All projects.</summary>
    public static CorpusList Read() =>
        new DeserializerBuilder()
            .WithNamingConvention(CamelCaseNamingConvention.Instance)
            .Build()
            .Deserialize<CorpusList>(File.ReadAllText(Path.Combine(Root, "projects.yaml")));

    /// <summary>Writes a compile database as a cross build leaves it, and returns the folder of the build.</summary>
    /// <param name="package">Where the sources come from.</param>
    /// <param name="folder">An empty folder for what is unpacked and written.</param>
    public string WriteDatabase(CorpusPackage package, string folder)
    {
        var sources = package.Folder ?? Unpack(package.Archive!, folder);
        var build = Path.GetFullPath(Path.Combine(sources, Folder));
        var entries = Files
            .Concat(Own.Select(file => Path.Combine(Root, file)))
            .Select(file => new
            {
                directory = build,
                command = string.Join(
                    ' ',
                    [
                        "avr-gcc",
                        "-mmcu=" + Device,
                        .. Flags.Select(flag => flag.Contains('>', StringComparison.Ordinal) ? $"\"{flag}\"" : flag),
                        "-c",
                        "-o",
                        Path.Combine(folder, Path.GetFileName(file) + ".o"),
                        file,
                    ]
                ),
                file,
            });
        File.WriteAllText(Path.Combine(folder, "compile_commands.json"), JsonSerializer.Serialize(entries));
        return build;
    }

    private static string Unpack(string archive, string folder)
    {
        using var file = File.OpenRead(archive);
        using var plain = new GZipStream(file, CompressionMode.Decompress);
        using var entries = new TarReader(plain);
        while (entries.GetNextEntry() is { } entry)
        {
            // The archive also holds links to what is not in it.
            var path = Path.GetFullPath(Path.Combine(folder, entry.Name));
            if (
                entry.EntryType is TarEntryType.RegularFile or TarEntryType.V7RegularFile
                && path.StartsWith(folder, StringComparison.Ordinal)
            )
            {
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                entry.ExtractToFile(path, overwrite: true);
            }
        }

        return folder;
    }
}

/// <summary>The list of projects.</summary>
public sealed class CorpusList
{
    public Dictionary<string, CorpusPackage> Packages { get; set; } = [];

    public List<CorpusProject> Projects { get; set; } = [];
}

/// <summary>An installed package.</summary>
public sealed class CorpusPackage
{
    public string Version { get; set; } = "";

    /// <summary>The archive that holds the sources, or null.</summary>
    public string? Archive { get; set; }

    /// <summary>The folder that holds the sources, or null.</summary>
    public string? Folder { get; set; }
}
