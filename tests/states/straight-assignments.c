// device: atmega328p
// flags: -DF_CPU=8000000UL
// Every register of the pins is assigned once; nothing ever wakes the part.
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRB = 0x3F;
    PORTB = 0x00;
    DDRC = 0x00;
    PORTC = 0x7F;
    DDRD = 0b11110000;
    PORTD = 0b00001101;
    ADCSRA = 0;
    ACSR = _BV(ACD);
    PRR = _BV(PRTWI) | _BV(PRSPI) | _BV(PRUSART0) | _BV(PRADC);
    SMCR = _BV(SM1) | _BV(SE);
    for (;;)
        sleep_cpu(); // state: PORTD = 0b0000_1101, DDRB = 0x3f, SMCR = 0b0000_0101
}
