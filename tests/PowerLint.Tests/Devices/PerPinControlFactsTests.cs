using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.Tests.Devices;

/// <summary>
/// Addresses, bits and vectors of the parts with per-pin control registers, taken from the vendor's register headers as the
/// public repository avrdudes/avr-libc carries them below <c>include/avr</c>; Debian's C library has none for these parts. The
/// file and commit stand above each table.
/// </summary>
public sealed class PerPinControlFactsTests
{
    private static readonly DeviceCatalog Catalog = DeviceCatalog.Open(RepositoryRoot.Combine("devices"));

    // iom4809.h at commit 0e70a94b41173a1b928ef63b286479f1429cafca
    [Theory]
    [InlineData("CPU.CCP", 0x0034)]
    [InlineData("CPU.SREG", 0x003F)]
    [InlineData("GPIO.GPIOR0", 0x001C)]
    [InlineData("PORTF.OUTTGL", 0x04A7)]
    [InlineData("PORTF.INTFLAGS", 0x04A9)]
    [InlineData("PORTF.PORTCTRL", 0x04AA)]
    [InlineData("PORTF.PIN0CTRL", 0x04B0)]
    [InlineData("PORTF.PIN7CTRL", 0x04B7)]
    [InlineData("PORTMUX.EVSYSROUTEA", 0x05E0)]
    [InlineData("PORTMUX.USARTROUTEA", 0x05E2)]
    [InlineData("PORTMUX.TWISPIROUTEA", 0x05E3)]
    [InlineData("PORTMUX.TCBROUTEA", 0x05E5)]
    [InlineData("ADC0.CTRLA", 0x0600)]
    [InlineData("ADC0.MUXPOS", 0x0606)]
    [InlineData("ADC0.COMMAND", 0x0608)]
    [InlineData("ADC0.INTFLAGS", 0x060B)]
    [InlineData("ADC0.RES", 0x0610)]
    [InlineData("ADC0.CALIB", 0x0616)]
    [InlineData("AC0.MUXCTRLA", 0x0682)]
    [InlineData("AC0.DACREF", 0x0684)]
    [InlineData("AC0.STATUS", 0x0687)]
    [InlineData("USART0.STATUS", 0x0804)]
    [InlineData("USART1.BAUD", 0x0828)]
    [InlineData("USART2.CTRLB", 0x0846)]
    [InlineData("USART3.RXPLCTRL", 0x086E)]
    [InlineData("TWI0.DUALCTRL", 0x08A1)]
    [InlineData("TWI0.MCTRLA", 0x08A3)]
    [InlineData("TWI0.SCTRLA", 0x08A9)]
    [InlineData("TWI0.SADDRMASK", 0x08AE)]
    [InlineData("SPI0.INTFLAGS", 0x08C3)]
    [InlineData("TCA0.SINGLE.INTCTRL", 0x0A0A)]
    [InlineData("TCA0.SINGLE.PER", 0x0A26)]
    [InlineData("TCA0.SINGLE.CMP2BUF", 0x0A3C)]
    [InlineData("TCB0.INTCTRL", 0x0A85)]
    [InlineData("TCB1.CCMP", 0x0A9C)]
    [InlineData("TCB3.CTRLA", 0x0AB0)]
    [InlineData("NVMCTRL.STATUS", 0x1002)]
    public void Addresses_of_the_part_with_48_pins(string register, int address) =>
        AssertAddress("atmega4809", register, address);

    // iotn1617.h at commit 105a1a029a51cdd4c62b064d48e5c785158cfc93
    [Theory]
    [InlineData("VPORTC.INTFLAGS", 0x000B)]
    [InlineData("RSTCTRL.SWRR", 0x0041)]
    [InlineData("SLPCTRL.CTRLA", 0x0050)]
    [InlineData("CLKCTRL.MCLKCTRLB", 0x0061)]
    [InlineData("CLKCTRL.MCLKSTATUS", 0x0063)]
    [InlineData("CLKCTRL.OSC20MCTRLA", 0x0070)]
    [InlineData("CLKCTRL.OSC32KCTRLA", 0x0078)]
    [InlineData("CLKCTRL.XOSC32KCTRLA", 0x007C)]
    [InlineData("BOD.CTRLA", 0x0080)]
    [InlineData("BOD.VLMCTRLA", 0x0088)]
    [InlineData("BOD.STATUS", 0x008B)]
    [InlineData("VREF.CTRLD", 0x00A3)]
    [InlineData("WDT.STATUS", 0x0101)]
    [InlineData("CPUINT.LVL1VEC", 0x0113)]
    [InlineData("CRCSCAN.STATUS", 0x0122)]
    [InlineData("RTC.CLKSEL", 0x0147)]
    [InlineData("RTC.PER", 0x014A)]
    [InlineData("RTC.PITCTRLA", 0x0150)]
    [InlineData("RTC.PITINTFLAGS", 0x0153)]
    [InlineData("CCL.LUT0CTRLA", 0x01C5)]
    [InlineData("CCL.TRUTH1", 0x01CC)]
    [InlineData("PORTMUX.CTRLD", 0x0203)]
    [InlineData("PORTB.PIN7CTRL", 0x0437)]
    [InlineData("PORTC.PIN5CTRL", 0x0455)]
    [InlineData("ADC1.MUXPOS", 0x0646)]
    [InlineData("AC2.CTRLA", 0x0690)]
    [InlineData("DAC2.DATA", 0x06B1)]
    [InlineData("TWI0.MCTRLA", 0x0813)]
    [InlineData("TCB1.CTRLA", 0x0A50)]
    [InlineData("TCD0.CTRLA", 0x0A80)]
    public void Addresses_of_the_part_with_24_pins(string register, int address) =>
        AssertAddress("attiny1617", register, address);

    // ioavr128db48.h at commit 087a9611f1c85bd7cb808bb17b737fabecd57a82
    [Theory]
    [InlineData("GPR.GPR3", 0x001F)]
    [InlineData("CPU.RAMPZ", 0x003B)]
    [InlineData("SLPCTRL.VREGCTRL", 0x0051)]
    [InlineData("CLKCTRL.MCLKCTRLC", 0x0062)]
    [InlineData("CLKCTRL.MCLKSTATUS", 0x0065)]
    [InlineData("CLKCTRL.OSCHFCTRLA", 0x0068)]
    [InlineData("CLKCTRL.PLLCTRLA", 0x0070)]
    [InlineData("CLKCTRL.XOSCHFCTRLA", 0x0080)]
    [InlineData("BOD.CTRLA", 0x00A0)]
    [InlineData("VREF.ADC0REF", 0x00B0)]
    [InlineData("VREF.ACREF", 0x00B4)]
    [InlineData("MVIO.STATUS", 0x00C2)]
    [InlineData("CCL.INTCTRL1", 0x01C6)]
    [InlineData("CCL.TRUTH4", 0x01DB)]
    [InlineData("PORTA.PINCONFIG", 0x040B)]
    [InlineData("PORTA.PINCTRLUPD", 0x040C)]
    [InlineData("PORTA.PINCTRLSET", 0x040D)]
    [InlineData("PORTA.PINCTRLCLR", 0x040E)]
    [InlineData("AC2.CTRLA", 0x0690)]
    [InlineData("DAC0.CTRLA", 0x06A0)]
    [InlineData("ZCD1.CTRLA", 0x06C8)]
    [InlineData("OPAMP.CTRLA", 0x0700)]
    [InlineData("USART4.RXDATAL", 0x0880)]
    [InlineData("TWI1.CTRLA", 0x0920)]
    [InlineData("SPI1.CTRLA", 0x0960)]
    [InlineData("TCA1.SINGLE.CTRLA", 0x0A40)]
    [InlineData("TCB3.CTRLA", 0x0B30)]
    [InlineData("TCD0.CTRLA", 0x0B80)]
    public void Addresses_of_the_part_with_a_second_supply(string register, int address) =>
        AssertAddress("avr128db48", register, address);

    // iotn3227.h at commit 105a1a029a51cdd4c62b064d48e5c785158cfc93
    [Theory]
    [InlineData("VREF.CTRLB", 0x00A1)]
    [InlineData("RTC.CALIB", 0x0146)]
    [InlineData("CCL.TRUTH3", 0x01D7)]
    [InlineData("PORTC.PORTCTRL", 0x044A)]
    [InlineData("PORTMUX.SPIROUTEA", 0x05E3)]
    [InlineData("PORTMUX.TCBROUTEA", 0x05E5)]
    [InlineData("ADC0.INTCTRL", 0x0604)]
    [InlineData("ADC0.STATUS", 0x0606)]
    [InlineData("ADC0.CTRLF", 0x0609)]
    [InlineData("ADC0.COMMAND", 0x060A)]
    [InlineData("ADC0.MUXPOS", 0x060C)]
    [InlineData("ADC0.RESULT", 0x0610)]
    [InlineData("ADC0.SAMPLE", 0x0614)]
    [InlineData("ADC0.WINHT", 0x061E)]
    [InlineData("USART1.CTRLB", 0x0826)]
    [InlineData("TWI0.MCTRLA", 0x08A3)]
    [InlineData("SPI0.DATA", 0x08C4)]
    [InlineData("TCB0.CNT", 0x0A8A)]
    public void Addresses_of_the_second_tiny_series(string register, int address) =>
        AssertAddress("attiny3227", register, address);

    // ioavr64ea48.h at commit 284a771d445aa0d77e2a4d7a142a687b3d932cf1
    [Theory]
    [InlineData("CLKCTRL.MCLKTIMEBASE", 0x0066)]
    [InlineData("CLKCTRL.OSCHFCTRLA", 0x0068)]
    [InlineData("VREF.DAC0REF", 0x00B2)]
    [InlineData("RTC.PITEVGENCTRLA", 0x0156)]
    [InlineData("PORTE.PINCTRLSET", 0x048D)]
    [InlineData("PORTF.PINCONFIG", 0x04AB)]
    [InlineData("PORTMUX.USARTROUTEB", 0x05E3)]
    [InlineData("PORTMUX.TCAROUTEA", 0x05E7)]
    [InlineData("PORTMUX.ACROUTEA", 0x05EA)]
    [InlineData("ADC0.PGACTRL", 0x060B)]
    [InlineData("AC1.DACREF", 0x068D)]
    [InlineData("AC1.CTRLB", 0x0689)]
    [InlineData("DAC0.DATA", 0x06A2)]
    [InlineData("USART2.RXPLCTRL", 0x084E)]
    [InlineData("TWI0.SADDRMASK", 0x090E)]
    [InlineData("TCA1.SINGLE.PER", 0x0A66)]
    public void Addresses_of_the_part_whose_pins_all_sense_without_a_clock(string register, int address) =>
        AssertAddress("avr64ea48", register, address);

    // The same files: field masks.
    [Theory]
    [InlineData("atmega4809", "AC0.CTRLA.OUTEN", 6, 1)]
    [InlineData("atmega4809", "AC0.CTRLA.RUNSTDBY", 7, 1)]
    [InlineData("atmega4809", "AC0.MUXCTRLA.MUXPOS", 3, 2)]
    [InlineData("atmega4809", "ADC0.CTRLA.RUNSTBY", 7, 1)]
    [InlineData("atmega4809", "ADC0.CTRLC.REFSEL", 4, 2)]
    [InlineData("atmega4809", "ADC0.CTRLD.INITDLY", 5, 3)]
    [InlineData("atmega4809", "ADC0.MUXPOS.MUXPOS", 0, 5)]
    [InlineData("atmega4809", "BOD.CTRLA.SLEEP", 0, 2)]
    [InlineData("atmega4809", "BOD.CTRLA.ACTIVE", 2, 2)]
    [InlineData("atmega4809", "BOD.CTRLA.SAMPFREQ", 4, 1)]
    [InlineData("atmega4809", "BOD.INTCTRL.VLMCFG", 1, 2)]
    [InlineData("atmega4809", "CCL.CTRLA.RUNSTDBY", 6, 1)]
    [InlineData("atmega4809", "VREF.CTRLB.ADC0REFEN", 1, 1)]
    [InlineData("atmega4809", "WDT.CTRLA.WINDOW", 4, 4)]
    [InlineData("atmega4809", "FUSE.BODCFG.LVL", 5, 3)]
    [InlineData("avr128db48", "TCA0.SINGLE.CTRLA.RUNSTDBY", 7, 1)]
    [InlineData("avr128db48", "TCB0.CTRLA.CLKSEL", 1, 3)]
    [InlineData("avr128db48", "TCB0.CTRLA.RUNSTDBY", 6, 1)]
    [InlineData("avr128db48", "TCB0.CTRLB.CCMPEN", 4, 1)]
    [InlineData("avr128db48", "TCB0.INTCTRL.OVF", 1, 1)]
    [InlineData("avr128db48", "TCD0.CTRLA.CNTPRES", 3, 2)]
    [InlineData("avr128db48", "TCD0.INTCTRL.TRIGB", 3, 1)]
    [InlineData("avr128da48", "VREF.ADC0REF.ALWAYSON", 7, 1)]
    [InlineData("avr128da48", "ZCD0.CTRLA.RUNSTDBY", 7, 1)]
    [InlineData("avr128da48", "ZCD0.INTCTRL.INTMODE", 0, 2)]
    [InlineData("attiny1617", "FUSE.SYSCFG0.RSTPINCFG", 2, 2)]
    [InlineData("attiny3227", "VREF.CTRLB.NVMREFEN", 2, 1)]
    [InlineData("avr64ea48", "FUSE.SYSCFG0.UPDIPINCFG", 4, 1)]
    [InlineData("avr64ea48", "TWI0.MCTRLA.TIMEOUT", 2, 2)]
    [InlineData("avr64ea48", "TWI0.MSTATUS.BUSSTATE", 0, 2)]
    [InlineData("avr64ea48", "TCB0.CTRLA.SYNCUPD", 4, 1)]
    [InlineData("attiny1617", "FUSE.OSCCFG.FREQSEL", 0, 2)]
    public void Bits(string part, string field, int low, int width)
    {
        var model = Catalog.Load(part);
        var dot = field.LastIndexOf('.');
        var found = model.Registers.Single(r => string.Equals(r.Name, field[..dot], StringComparison.Ordinal)).Fields[
            field[(dot + 1)..]
        ];
        Assert.Equal((low, width), (found.LowBit, found.WidthBits));
    }

    // The same files: vector numbers, and what the factory's fuses are.
    [Theory]
    [InlineData("atmega4809", "BOD_VLM_vect", 2)]
    [InlineData("atmega4809", "RTC_PIT_vect", 4)]
    [InlineData("atmega4809", "CCL_CCL_vect", 5)]
    [InlineData("atmega4809", "TCA0_CMP2_vect", 11)]
    [InlineData("atmega4809", "TWI0_TWIM_vect", 15)]
    [InlineData("atmega4809", "USART0_TXC_vect", 19)]
    [InlineData("atmega4809", "AC0_AC_vect", 21)]
    [InlineData("atmega4809", "ADC0_WCOMP_vect", 23)]
    [InlineData("atmega4809", "PORTF_PORT_vect", 29)]
    [InlineData("atmega4809", "PORTB_PORT_vect", 34)]
    [InlineData("atmega4809", "TCB3_INT_vect", 36)]
    [InlineData("atmega4809", "USART3_TXC_vect", 39)]
    [InlineData("avr128da48", "RTC_PIT_vect", 4)]
    [InlineData("avr128da48", "TCD0_TRIG_vect", 15)]
    [InlineData("avr128da48", "ADC0_WCMP_vect", 25)]
    [InlineData("avr128da48", "ZCD0_ZCD_vect", 26)]
    [InlineData("avr128da48", "AC1_AC_vect", 28)]
    [InlineData("avr128da48", "AC2_AC_vect", 40)]
    [InlineData("avr128da48", "TCB3_INT_vect", 41)]
    [InlineData("avr128da48", "TWI1_TWIM_vect", 43)]
    [InlineData("avr128da48", "PORTE_PORT_vect", 45)]
    [InlineData("avr128da48", "TCA1_CMP2_vect", 50)]
    [InlineData("avr128da48", "USART4_TXC_vect", 57)]
    [InlineData("avr128db48", "CLKCTRL_CFD_vect", 3)]
    [InlineData("avr128db48", "MVIO_MVIO_vect", 4)]
    [InlineData("avr128db48", "CCL_CCL_vect", 7)]
    [InlineData("avr128db48", "PORTA_PORT_vect", 8)]
    [InlineData("avr128db48", "USART0_RXC_vect", 21)]
    [InlineData("avr128db48", "ADC0_RESRDY_vect", 26)]
    [InlineData("avr128db48", "AC1_AC_vect", 29)]
    [InlineData("avr128db48", "NVMCTRL_EE_vect", 36)]
    [InlineData("avr128db48", "AC2_AC_vect", 41)]
    [InlineData("avr128db48", "TCB3_INT_vect", 44)]
    [InlineData("avr128db48", "PORTE_PORT_vect", 46)]
    [InlineData("avr128db48", "TCA1_OVF_vect", 47)]
    [InlineData("avr128db48", "ZCD1_ZCD_vect", 52)]
    [InlineData("avr128db48", "USART4_RXC_vect", 56)]
    [InlineData("attiny3227", "PORTB_PORT_vect", 7)]
    [InlineData("attiny3227", "TWI0_TWIM_vect", 15)]
    [InlineData("attiny3227", "USART0_TXC_vect", 19)]
    [InlineData("attiny3227", "ADC0_SAMPRDY_vect", 23)]
    [InlineData("attiny3227", "PORTC_PORT_vect", 24)]
    [InlineData("attiny3227", "USART1_TXC_vect", 28)]
    [InlineData("attiny3227", "NVMCTRL_EE_vect", 29)]
    [InlineData("avr64ea48", "RTC_PIT_vect", 5)]
    [InlineData("avr64ea48", "PORTA_PORT_vect", 7)]
    [InlineData("avr64ea48", "SPI0_INT_vect", 17)]
    [InlineData("avr64ea48", "ADC0_ERROR_vect", 23)]
    [InlineData("avr64ea48", "AC1_AC_vect", 26)]
    [InlineData("avr64ea48", "USART1_TXC_vect", 31)]
    [InlineData("avr64ea48", "NVMCTRL_NVMREADY_vect", 33)]
    [InlineData("avr64ea48", "TCA1_CMP2_vect", 42)]
    [InlineData("avr64ea48", "PORTB_PORT_vect", 44)]
    [InlineData("attiny1617", "PORTC_PORT_vect", 5)]
    [InlineData("attiny1617", "RTC_PIT_vect", 7)]
    [InlineData("attiny1617", "TCA0_HUNF_vect", 9)]
    [InlineData("attiny1617", "TCD0_TRIG_vect", 16)]
    [InlineData("attiny1617", "AC2_AC_vect", 19)]
    [InlineData("attiny1617", "ADC1_WCOMP_vect", 23)]
    [InlineData("attiny1617", "USART0_RXC_vect", 27)]
    [InlineData("attiny1617", "NVMCTRL_EE_vect", 30)]
    public void Vectors(string part, string vector, int number) =>
        Assert.Equal(
            number,
            Catalog.Load(part).Interrupts.Single(i => string.Equals(i.Name, vector, StringComparison.Ordinal)).Number
        );

    [Theory]
    [InlineData("atmega4809", "FUSE.BODCFG", 0x00)]
    [InlineData("avr128db48", "FUSE.SYSCFG0", 0xC0)]
    [InlineData("avr64ea48", "FUSE.SYSCFG0", 0xD0)]
    [InlineData("attiny3227", "FUSE.SYSCFG0", 0xF6)]
    [InlineData("attiny1617", "FUSE.OSCCFG", 0x7E)]
    [InlineData("attiny1617", "FUSE.SYSCFG0", 0xF6)]
    public void Factory_fuses(string part, string fuse, int value) =>
        Assert.Equal(
            (ulong)value,
            Catalog.Load(part).Registers.Single(r => string.Equals(r.Name, fuse, StringComparison.Ordinal)).Reset
        );

    [Fact]
    public void Registers_start_as_the_fuses_say()
    {
        var fuses = new Dictionary<string, ulong>(StringComparer.Ordinal) { ["FUSE.BODCFG"] = 0x56 };
        var model = Catalog.Load("attiny1614", fuses);
        // Sampled in sleep, enabled while active, 125 Hz.
        Assert.Equal(
            0x16UL,
            model.Registers.Single(r => string.Equals(r.Name, "BOD.CTRLA", StringComparison.Ordinal)).Reset
        );
    }

    private static void AssertAddress(string part, string register, int address) =>
        Assert.Equal(
            (ulong)address,
            Catalog.Load(part).Registers.Single(r => string.Equals(r.Name, register, StringComparison.Ordinal)).Address
        );
}
