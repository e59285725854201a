// device: atmega328p
// flags: -DF_CPU=8000000UL
// Bits set and cleared one after the other, as most firmware does it.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/wdt.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    DDRB |= (1 << PB5) | (1 << PB0);
    PORTB |= (1 << PB1);
    PORTB |= (1 << PB2) | (1 << PB3);
    PORTB &= ~(1 << PB2);
    DDRD |= 0xF0;
    DDRD &= (uint8_t)~(1 << 6);
    PORTD ^= 0x0F;
    PORTD ^= 0x05;
    MCUSR &= ~(1 << WDRF);
    WDTCSR |= (1 << WDCE) | (1 << WDE);
    WDTCSR = (1 << WDIE) | (1 << WDP3) | (1 << WDP0);
    SMCR = (SMCR & ~((1 << SM0) | (1 << SM1) | (1 << SM2))) | (1 << SM1);
    sei();
    while (1) {
        SMCR |= (1 << SE);
        asm volatile("sleep"); // state: PORTB = 0b00001010, PORTD = 0x0a, WDTCSR.WDIE = 1
        SMCR &= ~(1 << SE);
    }
}
