using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.Tests.Devices;

/// <summary>
/// What the ATmega328PB has beyond its siblings, which Debian's compiler and headers do not know. Sources: the register unit of a
/// free Pascal compiler (<c>atmega328pb.pp</c>, addresses and bits) and a published header that adds the part to the header of the
/// 328P (vectors).
/// </summary>
public sealed class Atmega328pbTests
{
    private static readonly DeviceModel Model = DeviceCatalog
        .Open(RepositoryRoot.Combine("devices"))
        .Load("atmega328pb");

    [Theory]
    [InlineData("PINE", 0x2C)]
    [InlineData("DDRE", 0x2D)]
    [InlineData("PORTE", 0x2E)]
    [InlineData("TIFR3", 0x38)]
    [InlineData("TIFR4", 0x39)]
    [InlineData("SPCR0", 0x4C)]
    [InlineData("SPSR0", 0x4D)]
    [InlineData("SPDR0", 0x4E)]
    [InlineData("ACSRB", 0x4F)]
    [InlineData("XFDCSR", 0x62)]
    [InlineData("PRR0", 0x64)]
    [InlineData("PRR1", 0x65)]
    [InlineData("TIMSK3", 0x71)]
    [InlineData("TIMSK4", 0x72)]
    [InlineData("PCMSK3", 0x73)]
    [InlineData("TCCR3A", 0x90)]
    [InlineData("TCCR3B", 0x91)]
    [InlineData("TCCR3C", 0x92)]
    [InlineData("OCR3AL", 0x98)]
    [InlineData("OCR3BL", 0x9A)]
    [InlineData("TCCR4A", 0xA0)]
    [InlineData("TCCR4B", 0xA1)]
    [InlineData("OCR4AL", 0xA8)]
    [InlineData("OCR4BL", 0xAA)]
    [InlineData("SPCR1", 0xAC)]
    [InlineData("SPDR1", 0xAE)]
    [InlineData("TWBR0", 0xB8)]
    [InlineData("TWCR0", 0xBC)]
    [InlineData("UCSR0D", 0xC3)]
    [InlineData("UCSR1A", 0xC8)]
    [InlineData("UCSR1D", 0xCB)]
    [InlineData("UBRR1L", 0xCC)]
    [InlineData("UDR1", 0xCE)]
    [InlineData("TWBR1", 0xD8)]
    [InlineData("TWCR1", 0xDC)]
    [InlineData("TWAMR1", 0xDD)]
    public void Registers_lie_where_the_unit_has_them(string name, int address) =>
        Assert.Equal(
            (ulong)address,
            Model.Registers.Single(r => string.Equals(r.Name, name, StringComparison.Ordinal)).Address
        );

    [Theory]
    [InlineData("PRR0", "PRADC PRUSART0 PRSPI0 PRTIM1 PRUSART1 PRTIM0 PRTIM2 PRTWI0")]
    [InlineData("PRR1", "PRTIM3 - PRSPI1 PRTIM4 PRPTC PRTWI1")]
    [InlineData("XFDCSR", "XFDIE XFDIF")]
    [InlineData("PCICR", "PCIE0 PCIE1 PCIE2 PCIE3")]
    [InlineData("PCMSK3", "PCINT24 PCINT25 PCINT26 PCINT27")]
    public void Bits_lie_where_the_unit_has_them(string name, string lowestFirst)
    {
        var register = Model.Registers.Single(r => string.Equals(r.Name, name, StringComparison.Ordinal));
        var bits = lowestFirst.Split(' ');
        Assert.Equal(
            bits.Select((bit, i) => (bit, i)).Where(pair => pair.bit is not "-"),
            register.Fields.Values.Where(f => f.WidthBits == 1).OrderBy(f => f.LowBit).Select(f => (f.Name, f.LowBit))
        );
    }

    [Theory]
    [InlineData("TWI0_vect", 24)]
    [InlineData("USART0_START_vect", 26)]
    [InlineData("PCINT3_vect", 27)]
    [InlineData("USART1_RX_vect", 28)]
    [InlineData("USART1_UDRE_vect", 29)]
    [InlineData("USART1_TX_vect", 30)]
    [InlineData("USART1_START_vect", 31)]
    [InlineData("TIMER3_CAPT_vect", 32)]
    [InlineData("TIMER3_COMPA_vect", 33)]
    [InlineData("TIMER3_COMPB_vect", 34)]
    [InlineData("TIMER3_OVF_vect", 35)]
    [InlineData("CFD_vect", 36)]
    [InlineData("PTC_EOC_vect", 37)]
    [InlineData("PTC_WCOMP_vect", 38)]
    [InlineData("SPI1_STC_vect", 39)]
    [InlineData("TWI1_vect", 40)]
    [InlineData("TIMER4_CAPT_vect", 41)]
    [InlineData("TIMER4_OVF_vect", 44)]
    [InlineData("SPI0_STC_vect", 17)]
    [InlineData("USART0_RX_vect", 18)]
    public void Vectors_have_the_numbers_of_the_header(string name, int number) =>
        Assert.Equal(
            number,
            Model.Interrupts.Single(i => i.OtherNames.Prepend(i.Name).Contains(name, StringComparer.Ordinal)).Number
        );
}
