// device: atmega328p
// A part whose sleep modes set the regulator themselves.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
