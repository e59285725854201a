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

    // COMP2_CSR has its output at bit 30 as COMP1_CSR has (RM0367, section 17.5, from memory); the synchronous prescaler has 15 bits on
    // all parts (same manuals); parts with the 48 MHz oscillator have a fourth bit to select what the clock output gives (RM0394, RCC_CFGR).
    private static readonly string[] Corrected =
    [
        "STM32L0x3.svd: COMP2.CSR.COMP2VALUE",
        "STM32L0x3.svd: RTC.PRER.PREDIV_S",
        "STM32L4x6.svd: RCC.CFGR.MCOSEL",
    ];

    // What the descriptions give is a state after start-up code (ports), that of a smaller part (gates in sleep), or left out: the
    // reference manuals' register tables, from memory, say what the models say.
    private static readonly string[] OtherResets =
    [
        "STM32L0x3.svd: RTC.PRER",
        "STM32L0x3.svd: RTC.WUTR",
        "STM32L0x3.svd: USB.CNTR",
        "STM32L0x3.svd: RCC.IOPSMENR",
        "STM32L0x3.svd: RCC.APB1SMENR",
        "STM32L0x3.svd: GPIOA.OSPEEDR",
        "STM32L4x6.svd: GPIOA.MODER",
        "STM32L4x6.svd: GPIOA.OSPEEDR",
        "STM32L4x6.svd: GPIOB.MODER",
        "STM32L4x6.svd: GPIOB.OSPEEDR",
        "STM32L4x6.svd: GPIOC.MODER",
        "STM32L4x6.svd: GPIOD.MODER",
        "STM32L4x6.svd: GPIOE.MODER",
        "STM32L4x6.svd: GPIOF.MODER",
        "STM32L4x6.svd: GPIOG.MODER",
        "STM32L4x6.svd: GPIOH.MODER",
        // Converters start in deep power-down, with their queue of injected channels off.
        "STM32L4x6.svd: ADC1.CR",
        "STM32L4x6.svd: ADC1.CFGR",
        "STM32L4x6.svd: ADC2.CR",
        "STM32L4x6.svd: ADC2.CFGR",
        "STM32L4x6.svd: ADC3.CR",
        "STM32L4x6.svd: ADC3.CFGR",
        // The access controller locks the debug unit and a reserved place; the user row loads the detector (DS40001882).
        "ATSAMD21J18A.svd: PAC1.WPSET",
        "ATSAMD21J18A.svd: PAC2.WPSET",
        "ATSAMD21J18A.svd: SYSCTRL.BOD33",
        // As a host it starts otherwise than as a device.
        "ATSAMD21J18A.svd: USB.CTRLB",
        // Flash without power in stop, the oscillator that reset starts, gates that reset leaves open, direct interrupt lines (RM0444).
        "STM32G071.svd: PWR.CR1",
        "STM32G071.svd: RCC.CR",
        "STM32G071.svd: RCC.AHBENR",
        "STM32G071.svd: RCC.APBENR1",
        "STM32G071.svd: RCC.IOPSMENR",
        "STM32G071.svd: RCC.AHBSMENR",
        "STM32G071.svd: RCC.APBSMENR1",
        "STM32G071.svd: RCC.APBSMENR2",
        "STM32G071.svd: EXTI.IMR1",
    ];

    [Theory]
    [InlineData("stm32l053xx", "STM32L0x3.svd", 80)]
    [InlineData("stm32l073xx", "STM32L0x3.svd", 95)]
    [InlineData("stm32l476xx", "STM32L4x6.svd", 180)]
    [InlineData("stm32l496xx", "STM32L4x6.svd", 190)]
    [InlineData("stm32l433xx", "STM32L4x6.svd", 130)]
    [InlineData("samd21e17a", "ATSAMD21J18A.svd", 300)]
    [InlineData("samd21j18a", "ATSAMD21J18A.svd", 370)]
    [InlineData("stm32g081xx", "STM32G071.svd", 150)]
    [InlineData("stm32g031xx", "STM32G071.svd", 100)]
    public void Fields_lie_where_the_description_has_them(string part, string file, int fewest)
    {
        if (!Directory.Exists(Published))
        {
            Assert.Skip("the published files are not here");
        }

        var model = DeviceCatalog.Open(RepositoryRoot.Combine("devices")).Load(part);
        var published = Read(file);

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
                where !Corrected.Contains($"{file}: {register.Name}.{field.Name}", StringComparer.Ordinal)
                select $"{register.Name}.{field.Name}: [{own.LowBit + own.WidthBits - 1}:{own.LowBit}], published [{field.LowBit + field.WidthBits - 1}:{field.LowBit}]"
            );
        }

        Assert.Equal("", string.Join('\n', differences));
        Assert.True(found >= fewest, $"only {found} registers are in the description");
    }

    /// <summary>What the program finds in a register after reset is what the description says, where that is not known to be wrong.</summary>
    [Theory]
    [InlineData("stm32l053xx", "STM32L0x3.svd", 40)]
    [InlineData("stm32l476xx", "STM32L4x6.svd", 80)]
    [InlineData("samd21j18a", "ATSAMD21J18A.svd", 250)]
    [InlineData("stm32g081xx", "STM32G071.svd", 80)]
    public void Registers_start_as_the_description_has_them(string part, string file, int fewest)
    {
        if (!Directory.Exists(Published))
        {
            Assert.Skip("the published files are not here");
        }

        var model = DeviceCatalog.Open(RepositoryRoot.Combine("devices")).Load(part);
        var published = Read(file);
        var compared = model
            .Registers.Where(register => register.Kind == RegisterKind.Configuration)
            .SelectMany(register => published[register.Address].Select(other => (register, other)))
            .ToArray();

        Assert.Equal(
            "",
            string.Join(
                '\n',
                from pair in compared
                where !OtherResets.Contains($"{file}: {pair.register.Name}", StringComparer.Ordinal)
                // What hardware calibrates or counts starts with anything; what no field names is left to the hardware.
                let named = pair.register.Fields.Values.Aggregate(0UL, (mask, field) => mask | MaskOf(field))
                let fixedBits = named & pair.register.ResetKnown & ~pair.register.HardwareChanged & pair.other.ResetMask
                where ((pair.register.Reset ^ pair.other.Reset) & fixedBits) != 0
                select $"{pair.register.Name}: 0x{pair.register.Reset:X}, published 0x{pair.other.Reset:X}"
            )
        );
        Assert.True(compared.Length >= fewest, $"only {compared.Length} registers are in the description");
    }

    private static ulong MaskOf(Field field) => ((1UL << field.WidthBits) - 1) << field.LowBit;

    private static ILookup<ulong, SvdRegister> Read(string file)
    {
        var errors = new DeviceModelErrors();
        var device = SvdReader.Read(Path.Combine(Published, file), file, errors, out _);
        Assert.False(errors.Any);
        return device!
            .Peripherals.SelectMany(peripheral => peripheral.Registers)
            .ToLookup(register => register.Address);
    }

    // Reference manuals' register tables (RM0367 section 9.4.1 and 9.4.4, RM0351 and RM0394 chapter GPIO, from memory): debug pins stay.
    [Theory]
    [InlineData("stm32l053xx", 'A', 0xEBFFFCFFUL, 0x24000000UL)]
    [InlineData("stm32l053xx", 'B', 0xFFFFFFFFUL, 0UL)]
    [InlineData("stm32l073xx", 'E', 0xFFFFFFFFUL, 0UL)]
    [InlineData("stm32l476xx", 'A', 0xABFFFFFFUL, 0x64000000UL)]
    [InlineData("stm32l476xx", 'B', 0xFFFFFEBFUL, 0x100UL)]
    [InlineData("stm32l433xx", 'H', 0xFUL, 0UL)]
    [InlineData("stm32g071xx", 'A', 0xEBFFFFFFUL, 0x24000000UL)]
    [InlineData("stm32g0b1xx", 'E', 0xFFFFFFFFUL, 0UL)]
    public void Ports_start_as_the_reference_manual_has_them(string part, char port, ulong mode, ulong pull)
    {
        var model = DeviceCatalog.Open(RepositoryRoot.Combine("devices")).Load(part);
        ulong Reset(string name) =>
            model.Registers.Single(r => string.Equals(r.Name, $"GPIO{port}.{name}", StringComparison.Ordinal)).Reset;

        Assert.Equal((mode, pull), (Reset("MODER"), Reset("PUPDR")));
    }
}
