using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.Tests.Devices;

/// <summary>
/// Addresses and vectors of the MSP430 dies for displays, which Debian's package has no headers of: as the part's own header gives them,
/// msp430fr6989.h (header version 1173) and msp430fr6972.h, in the public repository ciaa/firmware_v1 at commit
/// c4fd1f3297e62d96e8cba000331c03043ca561f3. Segments: the pin table of a published core library (100 pads) and a published drawing symbol
/// of MSP430FR6972IPM (64 pads).
/// </summary>
public sealed class DisplayMsp430FactsTests
{
    private static readonly DeviceCatalog Catalog = DeviceCatalog.Open(RepositoryRoot.Combine("devices"));

    [Theory]
    [InlineData("P1IN", 0x0200)]
    [InlineData("P2SEL0", 0x020B)]
    [InlineData("P3IV", 0x022E)]
    [InlineData("P4IE", 0x023B)]
    [InlineData("P5OUT", 0x0242)]
    [InlineData("P6SEL1", 0x024D)]
    [InlineData("P7REN", 0x0266)]
    [InlineData("P8DIR", 0x0265)]
    [InlineData("P9SEL0", 0x028A)]
    [InlineData("P10SEL1", 0x028D)]
    [InlineData("P10SELC", 0x0297)]
    [InlineData("PJSEL0", 0x032A)]
    [InlineData("TA0CTL", 0x0340)]
    [InlineData("TA1CCTL2", 0x0386)]
    [InlineData("TA2CCR1", 0x0414)]
    [InlineData("TA2IV", 0x042E)]
    [InlineData("TA3CCTL4", 0x044A)]
    [InlineData("TA3CCR4", 0x045A)]
    [InlineData("TA3EX0", 0x0460)]
    [InlineData("TB0CCTL6", 0x03CE)]
    [InlineData("TB0IV", 0x03EE)]
    [InlineData("RTCCTL0", 0x04A0)]
    [InlineData("RTCCTL13", 0x04A2)]
    [InlineData("RTCADOWDAY", 0x04BA)]
    [InlineData("REFCTL0", 0x01B0)]
    [InlineData("WDTCTL", 0x015C)]
    [InlineData("ADC12IER2", 0x0816)]
    [InlineData("ADC12MCTL31", 0x085E)]
    [InlineData("LCDCCTL0", 0x0A00)]
    [InlineData("LCDCCTL1", 0x0A02)]
    [InlineData("LCDCBLKCTL", 0x0A04)]
    [InlineData("LCDCMEMCTL", 0x0A06)]
    [InlineData("LCDCVCTL", 0x0A08)]
    [InlineData("LCDCPCTL0", 0x0A0A)]
    [InlineData("LCDCPCTL1", 0x0A0C)]
    [InlineData("LCDCPCTL2", 0x0A0E)]
    [InlineData("LCDCCPCTL", 0x0A12)]
    [InlineData("LCDCIV", 0x0A1E)]
    [InlineData("ESIIV", 0x0D1A)]
    [InlineData("ESIINT1", 0x0D1C)]
    [InlineData("ESIINT2", 0x0D1E)]
    [InlineData("ESIAFE", 0x0D20)]
    [InlineData("ESITSM", 0x0D24)]
    [InlineData("ESIPSM", 0x0D26)]
    [InlineData("ESIOSC", 0x0D28)]
    [InlineData("ESICTL", 0x0D2A)]
    public void Addresses_of_the_large_die(string register, int address) =>
        Assert.Equal(
            (ulong)address,
            Catalog
                .Load("msp430fr6989")
                .Registers.Single(r => string.Equals(r.Name, register, StringComparison.Ordinal))
                .Address
        );

    // The header's numbers count from another start; its comments give the address of each.
    [Theory]
    [InlineData("AES256_VECTOR", 0xFFC6)]
    [InlineData("RTC_VECTOR", 0xFFC8)]
    [InlineData("LCD_C_VECTOR", 0xFFCA)]
    [InlineData("PORT4_VECTOR", 0xFFCC)]
    [InlineData("PORT3_VECTOR", 0xFFCE)]
    [InlineData("TIMER3_A1_VECTOR", 0xFFD0)]
    [InlineData("TIMER3_A0_VECTOR", 0xFFD2)]
    [InlineData("PORT2_VECTOR", 0xFFD4)]
    [InlineData("TIMER2_A1_VECTOR", 0xFFD6)]
    [InlineData("TIMER2_A0_VECTOR", 0xFFD8)]
    [InlineData("PORT1_VECTOR", 0xFFDA)]
    [InlineData("TIMER1_A1_VECTOR", 0xFFDC)]
    [InlineData("TIMER1_A0_VECTOR", 0xFFDE)]
    [InlineData("DMA_VECTOR", 0xFFE0)]
    [InlineData("USCI_B1_VECTOR", 0xFFE2)]
    [InlineData("USCI_A1_VECTOR", 0xFFE4)]
    [InlineData("TIMER0_A1_VECTOR", 0xFFE6)]
    [InlineData("TIMER0_A0_VECTOR", 0xFFE8)]
    [InlineData("ADC12_VECTOR", 0xFFEA)]
    [InlineData("USCI_B0_VECTOR", 0xFFEC)]
    [InlineData("USCI_A0_VECTOR", 0xFFEE)]
    [InlineData("WDT_VECTOR", 0xFFF2)]
    [InlineData("TIMER0_B1_VECTOR", 0xFFF4)]
    [InlineData("TIMER0_B0_VECTOR", 0xFFF6)]
    [InlineData("COMP_E_VECTOR", 0xFFF8)]
    [InlineData("UNMI_VECTOR", 0xFFFA)]
    [InlineData("SYSNMI_VECTOR", 0xFFFC)]
    public void Vectors_of_both_dies(string vector, int address)
    {
        foreach (var part in new[] { "msp430fr6989", "msp430fr6972" })
        {
            var interrupt = Catalog
                .Load(part)
                .Interrupts.Single(i => string.Equals(i.Name, vector, StringComparison.Ordinal));
            Assert.Equal((part, address), (part, 0xFF80 + (2 * interrupt.Number)));
        }
    }

    [Fact]
    public void Only_the_large_die_has_the_scan_interface()
    {
        Assert.Equal(56, Catalog.Load("msp430fr5989").Interrupts.Single(i => i.Name is "ESCAN_IF_VECTOR").Number);
        Assert.DoesNotContain(Catalog.Load("msp430fr6979").Interrupts, i => i.Name is "ESCAN_IF_VECTOR");
        Assert.DoesNotContain(Catalog.Load("msp430fr6972").Interrupts, i => i.Name is "ESCAN_IF_VECTOR");
        Assert.DoesNotContain(Catalog.Load("msp430fr5989").Interrupts, i => i.Name is "LCD_C_VECTOR");
        Assert.DoesNotContain(Catalog.Load("msp430fr6889").Interrupts, i => i.Name is "AES256_VECTOR");
    }

    [Theory]
    [InlineData("msp430fr6989", "P1.5", 0)]
    [InlineData("msp430fr6989", "P1.4", 1)]
    [InlineData("msp430fr6989", "P4.1", 2)]
    [InlineData("msp430fr6989", "P4.0", 3)]
    [InlineData("msp430fr6989", "P10.0", 4)]
    [InlineData("msp430fr6989", "P4.7", 5)]
    [InlineData("msp430fr6989", "P4.4", 8)]
    [InlineData("msp430fr6989", "P5.7", 9)]
    [InlineData("msp430fr6989", "P5.4", 12)]
    [InlineData("msp430fr6989", "P7.4", 13)]
    [InlineData("msp430fr6989", "P7.0", 17)]
    [InlineData("msp430fr6989", "P8.3", 18)]
    [InlineData("msp430fr6989", "P8.0", 21)]
    [InlineData("msp430fr6989", "P3.7", 22)]
    [InlineData("msp430fr6989", "P3.3", 26)]
    [InlineData("msp430fr6989", "P7.7", 27)]
    [InlineData("msp430fr6989", "P10.1", 28)]
    [InlineData("msp430fr6989", "P7.6", 29)]
    [InlineData("msp430fr6989", "P7.5", 30)]
    [InlineData("msp430fr6989", "P6.7", 31)]
    [InlineData("msp430fr6989", "P3.2", 32)]
    [InlineData("msp430fr6989", "P5.3", 35)]
    [InlineData("msp430fr6989", "P5.0", 38)]
    [InlineData("msp430fr6989", "P10.2", 39)]
    [InlineData("msp430fr6989", "P2.7", 40)]
    [InlineData("msp430fr6989", "P2.4", 43)]
    [InlineData("msp430fr6972", "P1.7", 0)]
    [InlineData("msp430fr6972", "P1.4", 3)]
    [InlineData("msp430fr6972", "P4.3", 4)]
    [InlineData("msp430fr6972", "P4.2", 5)]
    [InlineData("msp430fr6972", "P4.7", 6)]
    [InlineData("msp430fr6972", "P4.4", 9)]
    [InlineData("msp430fr6972", "P5.7", 10)]
    [InlineData("msp430fr6972", "P7.4", 11)]
    [InlineData("msp430fr6972", "P7.0", 15)]
    [InlineData("msp430fr6972", "P2.0", 16)]
    [InlineData("msp430fr6972", "P2.3", 19)]
    [InlineData("msp430fr6972", "P3.7", 20)]
    [InlineData("msp430fr6972", "P3.3", 24)]
    [InlineData("msp430fr6972", "P3.2", 25)]
    [InlineData("msp430fr6972", "P3.0", 27)]
    [InlineData("msp430fr6972", "P6.6", 28)]
    [InlineData("msp430fr6972", "P6.4", 30)]
    public void Segments(string part, string pin, int segment)
    {
        var found = Catalog.Load(part).Pins.Single(p => string.Equals(p.Name, pin, StringComparison.Ordinal));
        var function = Assert.Single(
            found.Functions,
            f => f.Peripheral is "LCD_C" && f.Name.StartsWith('S') && char.IsDigit(f.Name[1])
        );
        Assert.Equal($"S{segment}", function.Name);
        var bit = Assert.Single(Assert.Single(function.When.Alternatives));
        Assert.Equal(($"LCDCPCTL{segment / 16}", segment % 16), (bit.Field.Register.Name, bit.Field.LowBit));
    }
}
