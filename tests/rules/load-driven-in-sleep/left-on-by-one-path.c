// device: atmega328p
// board: PD4: { load: "sensor", active: high }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    DDRD = _BV(PD4);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        PORTD |= _BV(PD4); // finding: load-driven-in-sleep PD4 possible note
        if (PINB & 1) {
            PORTD &= ~_BV(PD4);
        }
        sleep_mode();
    }
}
