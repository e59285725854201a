using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.Tests.Devices;

/// <summary>Every file of <c>devices/</c> fits the published schema and loads, whole.</summary>
public sealed class DeviceFilesTests
{
    private static readonly DeviceCatalog Catalog = DeviceCatalog.Open(RepositoryRoot.Combine("devices"));

    public static TheoryData<string> Files =>
        [
            .. Directory
                .EnumerateFiles(RepositoryRoot.Combine("devices"), "*.yaml")
                .Select(f => Path.GetFileName(f)!)
                .Order(StringComparer.Ordinal),
        ];

    public static TheoryData<string> Parts => [.. Catalog.Names];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_file_fits_the_schema(string file)
    {
        using var text = new StreamReader(RepositoryRoot.Combine("devices", file));
        Assert.Equal("", SchemaCheck.Differences(text));
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void A_part_is_complete(string part)
    {
        var model = Catalog.Load(part);
        Assert.NotEmpty(model.Pins);
        Assert.NotEmpty(model.SleepModes);
        Assert.NotEmpty(model.Interrupts);
        Assert.NotEmpty(model.Peripherals);
        Assert.NotEmpty(model.Sources);
        Assert.NotNull(model.PinElectrics);
        Assert.True(model.ResetClockHertz > 0);
        Assert.Contains(model.SupplyCurrents, row => string.Equals(row.Mode, "active", StringComparison.Ordinal));
        // A mode that no interrupt ends would be a grave.
        Assert.All(
            model.SleepModes,
            mode =>
                Assert.Contains(
                    model.Interrupts,
                    i => i.Wakes.Any(w => w.Modes.Contains(mode.Name, StringComparer.Ordinal))
                )
        );
        // Every package brings something out, every pin can be parked.
        Assert.All(
            model.Packages,
            package => Assert.Contains(model.Pins, pin => pin.BondedIn.Contains(package, StringComparer.Ordinal))
        );
        Assert.All(model.Pins, pin => Assert.NotEmpty(pin.ParkAsOutputLow));
    }

    [Fact]
    public void Fuses_can_be_set_whole_and_by_field()
    {
        var factory = Catalog
            .Load("atmega328p")
            .Registers.Single(r => string.Equals(r.Name, "LFUSE", StringComparison.Ordinal));
        // Source: data sheet 8271H, table 28-9 (fuse low byte: 0x62 by default).
        Assert.Equal(0x62UL, factory.Reset);
        var overrides = new Dictionary<string, ulong>(StringComparer.Ordinal) { ["LFUSE"] = 0xFF, ["LFUSE.CKOUT"] = 0 };
        var set = Catalog
            .Load("atmega328p", overrides)
            .Registers.Single(r => string.Equals(r.Name, "LFUSE", StringComparison.Ordinal));
        Assert.Equal(0xBFUL, set.Reset);
    }

    // Source: data sheet of ATmega640/1280/2560 (2549Q), sections EICRA (INT3 to INT0) and EICRB (INT7 to INT4).
    [Theory]
    [InlineData("INT0", "EICRA")]
    [InlineData("INT3", "EICRA")]
    [InlineData("INT4", "EICRB")]
    [InlineData("INT7", "EICRB")]
    public void An_external_interrupt_knows_the_register_of_its_sense(string interrupt, string register)
    {
        var peripheral = Catalog
            .Load("atmega2560")
            .Peripherals.Single(p => string.Equals(p.Name, interrupt, StringComparison.Ordinal));
        Assert.Equal(
            ["EIMSK", register],
            peripheral.Registers.Select(r => r.Name).Order(StringComparer.Ordinal).Reverse()
        );
    }

    [Fact]
    public void An_option_that_the_part_lacks_is_told()
    {
        var overrides = new Dictionary<string, ulong>(StringComparer.Ordinal) { ["LFUSES"] = 0xFF };
        var exception = Assert.Throws<DeviceModelException>(() => Catalog.Load("atmega328p", overrides));
        Assert.Equal(
            "the configuration sets 'LFUSES', which atmega328p does not have; did you mean 'LFUSE'?",
            Assert.Single(exception.Errors).Message
        );
    }
}
