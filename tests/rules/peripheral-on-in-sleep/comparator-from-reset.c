// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// Reset leaves the comparator on, and it draws current in idle.
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    DDRB = 0xff; // finding: peripheral-on-in-sleep AC proven warning
    WDTCSR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
