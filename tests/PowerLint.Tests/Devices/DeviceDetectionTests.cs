using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.Tests.Devices;

public sealed class DeviceDetectionTests
{
    private static readonly Dictionary<string, string> NoMacros = new(StringComparer.Ordinal);
    private static readonly DeviceCatalog Catalog = DeviceCatalog.Open(RepositoryRoot.Combine("devices"));

    [Theory]
    [InlineData("-mmcu=atmega328p", "atmega328p")]
    [InlineData("-Os -mmcu=attiny85 -Wall", "attiny85")]
    [InlineData("-mmcu atmega1284p", "atmega1284p")]
    [InlineData("-D__AVR_ATmega168PA__", "atmega168pa")]
    [InlineData("-D __AVR_ATmega168PA__=1", "atmega168pa")]
    [InlineData("-mmcu=avr5 -D__AVR_ATmega644P__", "atmega644p")]
    [InlineData("-mmcu=ATmega88", "atmega88")]
    [InlineData("-mmcu=attiny1614", "attiny1614")]
    [InlineData("-mmcu=avrxmega3 -D__AVR_ATmega4809__", "atmega4809")]
    [InlineData("-mmcu=attiny202", "attiny202")]
    [InlineData("-mmcu=avr128da48", "avr128da48")]
    [InlineData("-mmcu=attiny3227", "attiny3227")]
    [InlineData("-mmcu=avr16ea28", "avr16ea28")]
    [InlineData("-D__AVR_AVR64DB32__", "avr64db32")]
    public void Flags_name_the_part(string flags, string part)
    {
        var match = Assert.IsType<DeviceDetection.Match>(Catalog.Detect(flags.Split(' '), NoMacros));
        Assert.Equal(part, match.Name);
    }

    [Fact]
    public void Macros_name_the_part()
    {
        var macros = new Dictionary<string, string>(StringComparer.Ordinal) { ["__AVR_ATmega48PB__"] = "1" };
        Assert.Equal(new DeviceDetection.Match("atmega48pb", "__AVR_ATmega48PB__"), Catalog.Detect(["-Os"], macros));
    }

    [Fact]
    public void Flags_that_contradict_each_other_are_ambiguous()
    {
        var found = Assert.IsType<DeviceDetection.Ambiguous>(
            Catalog.Detect(["-mmcu=atmega328p", "-D__AVR_ATtiny85__"], NoMacros)
        );
        Assert.Equal(["atmega328p", "attiny85"], found.Names);
        Assert.Equal(["-mmcu=atmega328p", "-D__AVR_ATtiny85__"], found.Evidence);
    }

    [Fact]
    public void An_unknown_part_gives_the_nearest_names()
    {
        var found = Assert.IsType<DeviceDetection.Unknown>(Catalog.Detect(["-mmcu=atmega329p"], NoMacros));
        Assert.Equal("atmega329p", found.Asked);
        Assert.Contains("atmega328p", found.Nearest, StringComparer.Ordinal);
    }

    [Fact]
    public void Parts_that_a_pattern_stands_for_are_found_and_listed_by_name()
    {
        var found = Assert.IsType<DeviceDetection.Unknown>(Catalog.Detect(["-mmcu=attiny3212"], NoMacros));
        Assert.Contains("attiny212", found.Nearest, StringComparer.Ordinal);
        var members = Catalog
            .Families.Single(f => string.Equals(f.Family, "megaavr-0", StringComparison.Ordinal))
            .Members;
        Assert.Equal(
            [
                "atmega808",
                "atmega809",
                "atmega1608",
                "atmega1609",
                "atmega3208",
                "atmega3209",
                "atmega4808",
                "atmega4809",
            ],
            members
        );
    }

    [Fact]
    public void Flags_without_a_part_give_nothing()
    {
        var found = Assert.IsType<DeviceDetection.Unknown>(Catalog.Detect(["-Os", "-mcpu=cortex-m0plus"], NoMacros));
        Assert.Null(found.Asked);
        Assert.Empty(found.Nearest);
    }
}
