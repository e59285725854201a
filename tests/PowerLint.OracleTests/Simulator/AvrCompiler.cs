namespace PowerLint.OracleTests;

/// <summary>Firmware to build and run: one image.</summary>
/// <param name="Name">For people, and the name of its executable.</param>
/// <param name="Device">The part, as its compiler names it.</param>
/// <param name="Flags">Compiler flags besides the part.</param>
/// <param name="Files">Its C files, absolute.</param>
internal sealed record Firmware(string Name, string Device, IReadOnlyList<string> Flags, IReadOnlyList<string> Files);

/// <summary>Builds firmware for the simulator.</summary>
internal static class AvrCompiler
{
    // The compiler merges equal code, sleep instructions included, which then have two source lines.
    private static readonly string[] SteadyLines =
    [
        "-gdwarf-4",
        "-w",
        "-fno-crossjumping",
        "-fno-tree-tail-merge",
        "-fno-ipa-icf",
    ];

    /// <summary>Builds an executable.</summary>
    public static string Build(Firmware firmware, string folder)
    {
        var elf = Path.Combine(folder, firmware.Name + ".elf");
        try
        {
            Build(firmware, "-Os", elf);
        }
        catch (InvalidOperationException error)
            when (error.Message.Contains("relocation truncated", StringComparison.Ordinal))
        {
            // Once in some thousand programs avr-gcc 5.4 takes a short branch for one that is too far.
            Build(firmware, "-O1", elf);
        }

        return elf;
    }

    private static void Build(Firmware firmware, string optimisation, string elf) =>
        ExternalTool.Run(
            "avr-gcc",
            [$"-mmcu={firmware.Device}", .. firmware.Flags, optimisation, .. SteadyLines, "-o", elf, .. firmware.Files]
        );

    /// <summary>Builds several, two at a time.</summary>
    public static string[] BuildAll(IReadOnlyList<Firmware> images, string folder)
    {
        var elves = new string[images.Count];
        Parallel.For(
            0,
            images.Count,
            new ParallelOptions { MaxDegreeOfParallelism = 2 },
            index => elves[index] = Build(images[index], folder)
        );
        return elves;
    }
}
