// flags: -mmcu=atmega328p
// Registers by address, with the widths and conversions that the target gives them.
#define DDRB (*(volatile unsigned char *)0x24)
#define PORTB (*(volatile unsigned char *)(0x05 + 0x20))
#define TCNT1 (*(volatile unsigned short *)0x84)
void main(void)
{
    DDRB = 0xFF;
    PORTB |= 1 << 3;
    PORTB &= ~(1 << 3);
    PORTB ^= 0x81;
    TCNT1 = 0x1234;
    DDRB = PORTB;
    PORTB;
    (void)DDRB;
}
// expect: function main() : void
// expect:   u8![0x24] = 255:u8
// expect:   u8![0x25] |= 8:i16 in i16
// expect:   u8![0x25] &= -9:i16 in i16
// expect:   u8![0x25] ^= 129:i16 in i16
// expect:   u16![0x84] = 4660:u16
// expect:   u8![0x24] = u8![0x25]
// expect:   u8![0x25]
// expect:   u8![0x24]
