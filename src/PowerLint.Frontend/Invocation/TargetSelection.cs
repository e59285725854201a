namespace PowerLint.Frontend;

/// <summary>The architecture that a command compiles for.</summary>
/// <param name="Architecture"><c>avr</c>, <c>msp430</c>, <c>arm</c>, <c>riscv32</c> or <c>riscv64</c>.</param>
/// <param name="Triple">What the parser calls it.</param>
/// <param name="Drivers">Names of cross compilers whose headers fit, likeliest first.</param>
internal sealed record TargetSelection(string Architecture, string Triple, IReadOnlyList<string> Drivers)
{
    public static TargetSelection Avr { get; } = new("avr", "avr", ["avr-gcc"]);

    public static TargetSelection Msp430 { get; } = new("msp430", "msp430", ["msp430-elf-gcc", "msp430-gcc"]);

    public static TargetSelection Arm { get; } = new("arm", "arm-none-eabi", ["arm-none-eabi-gcc"]);

    public static TargetSelection RiscV32 { get; } =
        new(
            "riscv32",
            "riscv32-unknown-elf",
            ["riscv32-unknown-elf-gcc", "riscv64-unknown-elf-gcc", "riscv-none-elf-gcc", "riscv-none-embed-gcc"]
        );

    public static TargetSelection RiscV64 { get; } =
        RiscV32 with
        {
            Architecture = "riscv64",
            Triple = "riscv64-unknown-elf",
        };

    /// <summary>Every cross compiler that may be asked for its header folders.</summary>
    public static IEnumerable<string> KnownDrivers =>
        new[] { Avr, Msp430, Arm, RiscV32 }.SelectMany(target => target.Drivers);

    /// <summary>The target, from what the command says first and the device's name last; null where nothing tells.</summary>
    public static TargetSelection? From(string? compiler, IReadOnlyList<string> flags, string? device)
    {
        for (var i = 0; i < flags.Count; i++)
        {
            var triple =
                flags[i].StartsWith("--target=", StringComparison.Ordinal) ? flags[i]["--target=".Length..]
                : flags[i] is "-target" && i + 1 < flags.Count ? flags[i + 1]
                : null;
            if (triple is not null)
            {
                return FromTriple(triple, flags);
            }
        }

        var name = compiler is null ? "" : ForeignFlags.BareName(compiler);
        return FromForeign(name)
            ?? FromTriple(name, flags)
            ?? FromPart(PartFlag(flags))
            ?? FromProcessor(flags)
            ?? FromPart(device);
    }

    /// <summary>The part that <c>-mmcu=</c> names, or null.</summary>
    public static string? PartFlag(IReadOnlyList<string> flags) =>
        flags.LastOrDefault(flag => flag.StartsWith("-mmcu=", StringComparison.Ordinal))?["-mmcu=".Length..];

    /// <summary>The target of a part, by the pattern of its name.</summary>
    public static TargetSelection? FromPart(string? part) =>
        part?.ToLowerInvariant() switch
        {
            null => null,
            var name
                when Starts(
                    name,
                    "atmega",
                    "attiny",
                    "atxmega",
                    "at90",
                    "avr",
                    "ata6",
                    "at43",
                    "at76",
                    "at86rf",
                    "at94"
                ) => Avr,
            var name when Starts(name, "msp430", "cc430", "rf430", "msp430i") => Msp430,
            var name
                when Starts(
                    name,
                    "stm32",
                    "nrf5",
                    "atsam",
                    "sam",
                    "lpc",
                    "efm32",
                    "efr32",
                    "rp20",
                    "mk",
                    "cortex",
                    "gd32f",
                    "xmc",
                    "max32"
                ) => Arm,
            var name when Starts(name, "gd32v", "ch32v", "fe310", "esp32c", "esp32h") => RiscV32,
            _ => null,
        };

    private static TargetSelection? FromForeign(string compiler) =>
        compiler switch
        {
            "iccarm" or "armcc" or "armclang" or "armcl" => Arm,
            "iccavr" => Avr,
            "icc430" or "cl430" => Msp430,
            "iccriscv" => RiscV32,
            _ => null,
        };

    private static TargetSelection? FromTriple(string name, IReadOnlyList<string> flags) =>
        name switch
        {
            _ when Starts(name, "avr-", "avr") && (name.Length == 3 || name[3] == '-') => Avr,
            _ when Starts(name, "msp430") => Msp430,
            _ when Starts(name, "arm-", "armv", "thumb", "arm") && !Starts(name, "arm64") => Arm,
            _ when Starts(name, "riscv64") && !flags.Any(flag => Starts(flag, "-march=rv32")) => RiscV64,
            _ when Starts(name, "riscv") => RiscV32,
            _ => null,
        };

    private static TargetSelection? FromProcessor(IReadOnlyList<string> flags) =>
        flags.Any(flag => Starts(flag, "-mcpu=cortex", "-march=armv", "-mcpu=arm")) ? Arm
        : flags.Any(flag => Starts(flag, "-march=rv32")) ? RiscV32
        : flags.Any(flag => Starts(flag, "-march=rv64")) ? RiscV64
        : null;

    private static bool Starts(string text, params ReadOnlySpan<string> prefixes)
    {
        foreach (var prefix in prefixes)
        {
            if (text.StartsWith(prefix, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }
}
