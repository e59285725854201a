using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.Tests.Devices;

/// <summary>
/// Models held against published register descriptions (<c>/work/shared/svd</c>, skipped where that is absent): a register of the model
/// that the description knows by its address has fields of the same name at the same bits. The descriptions carry mistakes; those
/// that the reference manuals correct are listed with what is right.
/// </summary>
public sealed class PublishedRegistersTests
{
    private const string Published = "/work/shared/svd";

    // COMP2_CSR has its output at bit 30 as COMP1_CSR has (RM0367, section 17.5, from memory).
    private static readonly string[] Corrected = ["COMP2.CSR.COMP2VALUE"];

    [Theory]
    [InlineData("stm32l053xx", "STM32L0x3.svd", 80)]
    [InlineData("stm32l073xx", "STM32L0x3.svd", 95)]
    public void Fields_lie_where_the_description_has_them(string part, string file, int fewest)
    {
        if (!Directory.Exists(Published))
        {
            Assert.Skip("the published files are not here");
        }

        var model = DeviceCatalog.Open(RepositoryRoot.Combine("devices")).Load(part);
        var errors = new DeviceModelErrors();
        var device = SvdReader.Read(Path.Combine(Published, file), file, errors, out _);
        Assert.False(errors.Any);
        var published = device!
            .Peripherals.SelectMany(peripheral => peripheral.Registers)
            .ToLookup(register => register.Address);

        var differences = new List<string>();
        var found = 0;
        foreach (var register in model.Registers)
        {
            var others = published[register.Address].ToArray();
            found += others.Length > 0 ? 1 : 0;
            differences.AddRange(
                from other in others
                from field in other.Fields
                where register.Fields.ContainsKey(field.Name)
                let own = register.Fields[field.Name]
                where (own.LowBit, own.WidthBits) != (field.LowBit, field.WidthBits)
                where !Corrected.Contains($"{register.Name}.{field.Name}", StringComparer.Ordinal)
                select $"{register.Name}.{field.Name}: [{own.LowBit + own.WidthBits - 1}:{own.LowBit}], published [{field.LowBit + field.WidthBits - 1}:{field.LowBit}]"
            );
        }

        Assert.Equal("", string.Join('\n', differences));
        Assert.True(found >= fewest, $"only {found} registers are in the description");
    }

    // Reference manuals' register tables (RM0367 section 9.4.1 and 9.4.4, from memory): port A keeps its debug pins.
    [Theory]
    [InlineData("stm32l053xx", 'A', 0xEBFFFCFFUL, 0x24000000UL)]
    [InlineData("stm32l053xx", 'B', 0xFFFFFFFFUL, 0UL)]
    [InlineData("stm32l073xx", 'E', 0xFFFFFFFFUL, 0UL)]
    public void Ports_start_as_the_reference_manual_has_them(string part, char port, ulong mode, ulong pull)
    {
        var model = DeviceCatalog.Open(RepositoryRoot.Combine("devices")).Load(part);
        ulong Reset(string name) =>
            model.Registers.Single(r => string.Equals(r.Name, $"GPIO{port}.{name}", StringComparison.Ordinal)).Reset;

        Assert.Equal((mode, pull), (Reset("MODER"), Reset("PUPDR")));
    }
}
