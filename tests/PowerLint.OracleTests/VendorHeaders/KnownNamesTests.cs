using System.Text.RegularExpressions;
using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.OracleTests.VendorHeaders;

/// <summary>
/// Every part that a compiler knows is recognised by its name, as one part, or stands here with the reason why it is left out. Sources of
/// the names: Debian's avr-gcc (its device specifications) and msp430mcu 20120406 (its headers).
/// </summary>
public sealed partial class KnownNamesTests
{
    private static readonly DeviceCatalog Catalog = DeviceCatalog.Open(RepositoryRoot.Combine("devices"));

    private static readonly Dictionary<string, string> None = new(StringComparer.Ordinal);

    // A pattern of names, and why no model covers them.
    private static readonly (string Pattern, string Reason)[] LeftOutAvr =
    [
        ("avr[0-9].*|avrtiny|avrxmega[0-9]", "names of architectures, not of parts"),
        (
            "at90s[0-9].*|at90c8534|attiny(11|12|15|22|26|28)|atmega(103|161|163|323)",
            "parts of before 2003, without a family here"
        ),
        ("at43.*|at76.*|at86.*|at94k|m3000|at90scr100", "parts for one purpose, with other cores around them"),
        ("at90can.*|at90pwm.*|at90usb.*", "other lines: bus, motor and USB parts"),
        ("ata.*", "parts for cars and radios"),
        ("atmega(8|16|32|64|128)a?|atmega(162|8515|8535)", "the generation before, without power reduction registers"),
        ("atmega(165|169|325|329|645|649)0?[ap]*", "parts with a display, or like those"),
        ("atmega.*(hv|rf|m1|c1).*|atmega406", "parts for batteries, radios, motors"),
        ("atmega(8|16|32)u2|atmega32u6", "smaller USB parts"),
        ("attiny(4|5|9|10|20|40)", "parts with the reduced core"),
        ("attiny(43u|87|167|441|841|828|1634)", "other lines of small parts"),
        ("attiny2313", "before the A: two pin-change registers less"),
        ("atxmega.*(a1|a3|a3b|a4)", "before the U: another generation of peripherals"),
        ("atxmega.*b[13]", "parts with a display"),
    ];

    private static readonly (string Pattern, string Reason)[] LeftOutMsp430 =
    [
        ("msp430|msp430x.*|cc430x.*|.*generic", "headers of several parts"),
        ("msp430[cep][0-9].*|msp430cg.*", "read-only, windowed and once-programmable parts of before 2003"),
        (
            "msp430f1.*|msp430f4.*|msp430f[egw].*|msp430afe.*|msp430[lb].*",
            "other generations, and parts for one purpose"
        ),
        ("msp430fr57.*", "the first parts with ferroelectric memory: other clocks and no LPMx.5 in some"),
        (
            "msp430f5[123].*|msp430f54(18|19|35|36|37|38)|msp430f550.*|msp430f5510|msp430f56.*|msp430f6.*",
            "of the 5xx and 6xx generation the lines of F5529, F5438A and CC430F5137 are here"
        ),
        ("cc430f(512|514|614).*", "later radio parts, with another converter"),
    ];

    public static TheoryData<string> AvrNames =>
        [
            .. Directory
                .EnumerateDirectories("/usr/lib/gcc/avr")
                .SelectMany(version => Directory.EnumerateFiles(Path.Combine(version, "device-specs"), "specs-*"))
                .Select(file => Path.GetFileName(file)["specs-".Length..])
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];

    public static TheoryData<string> Msp430Names =>
        [
            .. Directory
                .EnumerateFiles("/usr/msp430/include", "*.h")
                .Select(file => Path.GetFileNameWithoutExtension(file))
                .Where(name => PartName().IsMatch(name))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(AvrNames))]
    public void A_name_that_avr_gcc_knows_is_one_part_or_left_out(string name)
    {
        // What the compiler defines for the part names the same one as the flag.
        Dictionary<string, string> Macros() =>
            new AvrHeader(name, headers: false)
                .Macros.Where(m => PartMacro().IsMatch(m.Key))
                .ToDictionary(StringComparer.Ordinal);

        AssertKnown(name, Macros, LeftOutAvr);
    }

    [Theory]
    [MemberData(nameof(Msp430Names))]
    public void A_name_that_the_msp430_headers_know_is_one_part_or_left_out(string name) =>
        AssertKnown(
            name,
            () => new(StringComparer.Ordinal) { [$"__{name.ToUpperInvariant()}__"] = "1" },
            LeftOutMsp430
        );

    [Fact]
    public void Every_reason_is_still_needed()
    {
        Assert.All(LeftOutAvr, left => Assert.Contains(AvrNames, row => Matches(row.Data, left.Pattern)));
        Assert.All(LeftOutMsp430, left => Assert.Contains(Msp430Names, row => Matches(row.Data, left.Pattern)));
    }

    private static void AssertKnown(
        string name,
        Func<Dictionary<string, string>> macros,
        (string Pattern, string Reason)[] leftOut
    )
    {
        var reasons = leftOut.Where(left => Matches(name, left.Pattern)).Select(left => left.Reason).ToArray();
        if (reasons.Length > 0)
        {
            Assert.IsType<DeviceDetection.Unknown>(Catalog.Detect([$"-mmcu={name}"], None));
            Assert.Single(reasons);
            return;
        }

        Assert.Equal(name, Assert.IsType<DeviceDetection.Match>(Catalog.Detect([$"-mmcu={name}"], None)).Name);
        Assert.Equal(name, Assert.IsType<DeviceDetection.Match>(Catalog.Detect([], macros())).Name);
    }

    private static bool Matches(string name, string pattern) =>
        Regex.IsMatch(name, $"^(?:{pattern})$", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));

    [GeneratedRegex("^(msp|cc)430", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex PartName();

    [GeneratedRegex("^__AVR_AT", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex PartMacro();
}
