// device: atmega328p
// flags: -DF_CPU=8000000UL
// A handler counts a delay down; the loop only looks.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t delay;

ISR(TIMER0_COMPA_vect)
{
    if (delay)
        delay--;
}

int main(void)
{
    TCCR0A = _BV(WGM01);
    OCR0A = 124;
    TCCR0B = _BV(CS01) | _BV(CS00); // 8 MHz / 64 / 125: 1 ms
    TIMSK0 = _BV(OCIE0A);
    sei();
    for (;;) {
        PINB = _BV(PINB0);
        delay = 40;
        while (delay) // finding: busy-wait-delay main() {{40 ms}}
            ;
        sleep_mode();
    }
}
