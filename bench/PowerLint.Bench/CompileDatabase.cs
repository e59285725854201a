using System.Text.Json;

namespace PowerLint.Bench;

/// <summary>Writes compile databases as a cross build leaves them.</summary>
internal static class CompileDatabase
{
    public const string FileName = "compile_commands.json";

    public static void Write(
        string folder,
        IEnumerable<string> files,
        IEnumerable<string> flags,
        string? directory = null
    ) =>
        File.WriteAllText(
            Path.Combine(folder, FileName),
            JsonSerializer.Serialize(
                files.Select(file => new
                {
                    directory = directory ?? folder,
                    file,
                    arguments = (string[])["avr-gcc", .. flags, "-c", file, "-o", "/dev/null"],
                })
            )
        );
}
