using System.Collections.Concurrent;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.OracleTests;

/// <summary>A copy of a case with a fix applied.</summary>
/// <param name="Firmware">The copy.</param>
/// <param name="Shown">What the fix changed, for messages.</param>
/// <param name="Folder">The temporary folder.</param>
internal sealed record FixedCopy(FirmwareCase Firmware, string Shown, string Folder) : IDisposable
{
    private static readonly ConcurrentDictionary<string, bool> s_known = new(StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    public static FixedCopy Of(FirmwareCase original, Fix fix)
    {
        var root = Directory.CreateTempSubdirectory("powerlint-fix-").FullName;
        var path = RepositoryRoot.Combine(original.Name.Split('/'));
        var sources = Directory.Exists(path) ? Directory.EnumerateFiles(path) : [path];
        BringSharedHeaders(root);
        var folder = Directory.CreateDirectory(Path.Combine(root, "rules", "case")).FullName;
        var copies = sources.ToDictionary(source => source, source => Path.Combine(folder, Path.GetFileName(source)));
        foreach (var (source, copy) in copies)
        {
            var edits = fix.Edits.Where(edit => edit.Range.File.Path == source);
            File.WriteAllText(copy, EditedText.Apply(File.ReadAllText(source), edits)!);
        }

        Assert.All(fix.Edits, edit => Assert.True(copies.ContainsKey(edit.Range.File.Path), edit.Range.ToString()));
        return new FixedCopy(
            FirmwareCase.Load(Directory.Exists(path) ? folder : copies[path], ruleId: null),
            $"{fix.Description}:\n{string.Join('\n', fix.Edits.Select(edit => $"{edit.Range}: {edit.Text}"))}",
            root
        );
    }

    /// <summary>Puts the header that cases for parts of the tests share where such a case looks for it.</summary>
    public static void BringSharedHeaders(string root)
    {
        Directory.CreateSymbolicLink(Path.Combine(root, "families"), RepositoryRoot.Combine("tests", "families"));
        var shared = Directory.CreateDirectory(Path.Combine(root, "arm-layout", "firmware"));
        foreach (
            var header in Directory.EnumerateFiles(RepositoryRoot.Combine("tests", "arm-layout", "firmware"), "*.h")
        )
        {
            File.Copy(header, Path.Combine(shared.FullName, Path.GetFileName(header)));
        }
    }

    /// <summary>What the cross compiler says, where there is one for the part: nothing is expected.</summary>
    public IEnumerable<string> CompilerMessages()
    {
        if (!s_known.GetOrAdd(Firmware.Header.Device, IsKnownToCompiler))
        {
            return [];
        }

        try
        {
            ExternalTool.Run(
                "avr-gcc",
                [
                    "-mmcu=" + Firmware.Header.Device,
                    "-Os",
                    "-fsyntax-only",
                    "-Werror=implicit-function-declaration",
                    .. Firmware.Header.Flags,
                    .. Firmware.Files,
                ]
            );
            return [];
        }
        catch (InvalidOperationException refused)
        {
            return [$"{refused.Message}\n{Shown}"];
        }
    }

    // Debian's compiler knows the classic and XMEGA parts; cases for others bring a register header of their own.
    private static bool IsKnownToCompiler(string device)
    {
        try
        {
            ExternalTool.Run(
                "avr-gcc",
                ["-mmcu=" + device, "-fsyntax-only", "-Werror", "-x", "c", "-include", "avr/io.h", "/dev/null"]
            );
            return true;
        }
        catch (InvalidOperationException)
        {
            return false;
        }
    }
}
