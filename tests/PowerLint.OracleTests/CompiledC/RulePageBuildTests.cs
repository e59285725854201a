using System.Text;
using PowerLint.Devices;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.OracleTests;

/// <summary>
/// The examples of the rule pages compile without a warning. Oracles: Debian's avr-gcc; for Arm parts its arm-linux-gnueabi-gcc,
/// told the part's processor. Debian has no compiler for MSP430.
/// </summary>
public sealed class RulePageBuildTests : IDisposable
{
    private static readonly Lazy<DeviceCatalog> Catalog = new(() =>
        DeviceCatalog.Open(RepositoryRoot.Combine("devices"))
    );

    private readonly string _folder = Directory.CreateTempSubdirectory("powerlint-page-build-").FullName;

    public static TheoryData<string> Styles => [.. RulePageExamples.Styles.Where(style => style != "MSP430")];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Styles))]
    public void Examples_of_a_style_compile(string style)
    {
        var refused = new StringBuilder();
        var count = 0;
        foreach (var rule in RuleCatalog.All)
        {
            foreach (var heading in (string[])["Example", "Mended"])
            {
                if (RulePageExamples.StylesOf(rule, heading).Contains(style))
                {
                    count++;
                    refused.Append(Compile(RulePageExamples.Write(rule, heading, style, _folder)));
                }
            }
        }

        Assert.Equal("", refused.ToString());
        Assert.NotEqual(0, count);
    }

    // What the compiler says against a program; empty where it takes it.
    private static string Compile(FirmwareCase firmware)
    {
        var device = Catalog.Value.Load(firmware.Header.Device, firmware.Header.Options);
        // A case's own command line, but for the compiler and the part, which this compiler may not know by its name.
        string[] flags =
        [
            .. firmware
                .Header.CommandLine(device)
                .Skip(1)
                .Where(flag => !flag.StartsWith("-mmcu=", StringComparison.Ordinal)),
        ];
        var isAvr = !device.Core.StartsWith("cortex-", StringComparison.Ordinal);
        string[] part = device.Core switch
        {
            // The core of these parts has this name there; their headers come from tests/families.
            "avr8x" => ["-mmcu=avrxmega3", "-D__AVR_DEV_LIB_NAME__=" + HeaderOf(device.Name)],
            _ when isAvr => ["-mmcu=" + device.Name],
            _ => ["-ffreestanding", "-mfloat-abi=soft"],
        };
        try
        {
            _ = ExternalTool.Run(
                isAvr ? "avr-gcc" : "arm-linux-gnueabi-gcc",
                [.. part, .. flags, "-Wall", "-Werror", "-c", "-o", "/dev/null", .. firmware.Files]
            );
            return "";
        }
        catch (InvalidOperationException refused)
        {
            return $"{firmware.Name}: {refused.Message}\n";
        }
    }

    // avr/io.h includes avr/io followed by the short form of the part's name.
    private static string HeaderOf(string part) =>
        part.Replace("attiny", "tn", StringComparison.Ordinal).Replace("atmega", "m", StringComparison.Ordinal);
}
