using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace PowerLint.Devices;

/// <summary>Writes a device file from an SVD file: what that tells, and headings for what it does not.</summary>
internal static class FamilySkeleton
{
    /// <summary>Processor exceptions stand before the interrupt lines in the vector table.</summary>
    public const int FirstInterrupt = 16;

    private const ulong SystemSpace = 0xE000E000;
    private const ulong SystemSpaceEnd = 0xE000F000;
    private const int LinesPerWord = 32;

    private static readonly Dictionary<string, string> Cores = new(StringComparer.Ordinal)
    {
        ["CM0"] = "cortex-m0",
        ["CM0+"] = "cortex-m0+",
        ["CM0PLUS"] = "cortex-m0+",
        ["CM1"] = "cortex-m1",
        ["CM3"] = "cortex-m3",
        ["CM4"] = "cortex-m4",
        ["CM7"] = "cortex-m7",
        ["CM23"] = "cortex-m23",
        ["CM33"] = "cortex-m33",
        ["CM35P"] = "cortex-m35p",
        ["CM52"] = "cortex-m52",
        ["CM55"] = "cortex-m55",
        ["CM85"] = "cortex-m85",
    };

    /// <summary>The file's text.</summary>
    /// <param name="device">The SVD file.</param>
    /// <param name="family">The family's name: the name of the file that the text goes to, without .yaml.</param>
    /// <param name="source">The SVD file's name, without its folder.</param>
    /// <param name="missing">What is left to fill in, for people.</param>
    public static string Write(SvdDevice device, string family, string source, out ImmutableArray<string> missing)
    {
        var core = device.Cpu is { } cpu ? Cores.GetValueOrDefault(cpu.Name) : null;
        var text = new StringBuilder();
        WriteHead(text, device, family, source, core);
        WriteRegisters(text, device, core is not null);
        WriteInterrupts(text, device, core is not null);
        foreach (var section in SkeletonSections.All)
        {
            text.Append('\n').Append(section.Template);
        }

        missing = [.. Missing(device, core)];
        return text.ToString();
    }

    private static IEnumerable<string> Missing(SvdDevice device, string? core)
    {
        if (core is null)
        {
            yield return device.Cpu is { } cpu
                ? $"core: '{cpu.Name}' is no processor that models know"
                : "core: the file does not name the processor";
        }

        if (device.Interrupts.IsEmpty)
        {
            yield return "interrupts: the file lists none";
        }
        else
        {
            yield return "interrupts: the enable bits in their peripherals, flags, and the modes that each ends";
        }

        yield return "registers: which bits are strobes or read 0, what hardware changes, and resets held against the reference manual";
        foreach (var section in SkeletonSections.All)
        {
            yield return section.Missing;
        }
    }

    private static void WriteHead(StringBuilder text, SvdDevice device, string family, string source, string? core)
    {
        var version = device.Version is { Length: > 0 } given ? $", version {given}" : "";
        text.Append(
            CultureInfo.InvariantCulture,
            $"""
            # A skeleton: registers and interrupt lines as {source} has them, the rest to fill in (devices/README.md says how).
            # Register descriptions carry mistakes: hold what decides power, resets above all, against the reference manual.
            family: {SkeletonText.Word(family)}
            core: {core ?? "other"}

            """
        );
        if (core is not null)
        {
            text.Append("extends: cortex-m\n");
        }

        text.Append(
            CultureInfo.InvariantCulture,
            $$"""

            members:
              {{SkeletonText.Word(device.Name.ToLowerInvariant())}}: {} # macros, packages, variants

            documents:
              svd: {{SkeletonText.Quoted($"{source}{version}")}}

            sources:
              registers: svd

            """
        );
        if (!device.Interrupts.IsEmpty)
        {
            text.Append("  interrupts: svd\n");
        }

        if (core is null || device.Interrupts.IsEmpty)
        {
            return;
        }

        text.Append("\ninstances:\n");
        var words = (device.Interrupts[^1].Number / LinesPerWord) + 1;
        for (var n = 0; n < words; n++)
        {
            text.Append(CultureInfo.InvariantCulture, $"  NVIC{n}: {{ block: nvic-lines, n: {n}, offset: {4 * n} }}\n");
        }
    }

    private static void WriteRegisters(StringBuilder text, SvdDevice device, bool hasSystemSpace)
    {
        text.Append("\nregisters:\n");
        bool IsOfProcessor(SvdRegister register) =>
            hasSystemSpace && register.Address is >= SystemSpace and < SystemSpaceEnd;
        var views = SkeletonViews.Find(
            device.Peripherals.SelectMany(peripheral => peripheral.Registers),
            IsOfProcessor
        );
        foreach (var peripheral in device.Peripherals)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"  # {SkeletonText.Quoted(peripheral.Name)[1..^1]} at 0x{peripheral.Address:X8}\n"
            );
            foreach (var register in peripheral.Registers)
            {
                // The processor's own file names the fields of its registers, perhaps in another spelling.
                SkeletonRegister.Write(
                    text,
                    IsOfProcessor(register) ? register with { Fields = [] } : register,
                    views.Contains(register)
                );
            }
        }
    }

    private static void WriteInterrupts(StringBuilder text, SvdDevice device, bool hasController)
    {
        if (device.Interrupts.IsEmpty)
        {
            return;
        }

        text.Append(
            "\n# Numbers count from the start of the vector table: the processor's exceptions come first, line 0 is 16.\n"
        );
        text.Append("interrupts:\n");
        foreach (var interrupt in device.Interrupts)
        {
            var enabled = hasController
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $", enabled: {{ \"NVIC.ISER{interrupt.Number / LinesPerWord}[{interrupt.Number % LinesPerWord}]\": 1 }}"
                )
                : "";
            var others = interrupt.OtherNames.IsEmpty
                ? ""
                : $", other-names: [{string.Join(", ", interrupt.OtherNames.Select(Handler))}]";
            text.Append(
                CultureInfo.InvariantCulture,
                $"  {Handler(interrupt.Name)}: {{ number: {interrupt.Number + FirstInterrupt}{others}{enabled} }} # {string.Join(", ", interrupt.Peripherals)}\n"
            );
        }
    }

    private static string Handler(string name) => SkeletonText.Word($"{name}_IRQHandler");
}
