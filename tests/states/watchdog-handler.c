// device: attiny85
// flags: -DF_CPU=1000000UL
// The handler lights a lamp, main puts it out again before it sleeps.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t ticks;

ISR(WDT_vect)
{
    ticks++;
    PORTB |= _BV(PB1);
}

int main(void)
{
    DDRB = _BV(PB1);
    PORTB = _BV(PB0) | _BV(PB2) | _BV(PB3) | _BV(PB4);
    ADCSRA &= ~_BV(ADEN);
    PRR = _BV(PRADC) | _BV(PRTIM1) | _BV(PRUSI);
    WDTCR = _BV(WDCE) | _BV(WDE);
    WDTCR = _BV(WDIE) | _BV(WDP2) | _BV(WDP0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        cli();
        PORTB &= ~_BV(PB1);
        sleep_enable();
        sei();
        sleep_cpu(); // state: DDRB = 0x02, PRR = 0b0000_1011
        sleep_disable();
    }
}
