// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// A watchdog that resets the part is in use.
#include <avr/wdt.h>
EMPTY_INTERRUPT(INT0_vect)

int main(void)
{
    wdt_enable(WDTO_8S);
    EIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
