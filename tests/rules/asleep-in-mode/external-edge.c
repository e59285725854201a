// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// An edge needs the I/O clock, which power-down stops; the watchdog wakes the part meanwhile.
EMPTY_INTERRUPT(INT0_vect)
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    EICRA = _BV(ISC01);
    EIMSK = _BV(INT0); // finding: asleep-in-mode INT0 proven warning
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
