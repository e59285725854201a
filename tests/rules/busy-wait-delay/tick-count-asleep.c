// device: atmega328p
// flags: -DF_CPU=1000000UL
// The same wait, asleep between the ticks: no busy wait.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint16_t ticks;

ISR(TIMER0_COMPA_vect)
{
    ticks++;
}

int main(void)
{
    TCCR0A = _BV(WGM01);
    OCR0A = 124;
    TCCR0B = _BV(CS01);
    TIMSK0 = _BV(OCIE0A);
    sei();
    for (;;) {
        uint16_t start = ticks;
        while ((uint16_t)(ticks - start) < 25)
            sleep_mode();
        PINB = _BV(PINB0);
    }
}
