// device: atmega328p
// The port's change interrupt is on, but no pin of it may raise it.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT2_vect)

int main(void)
{
    PCICR = _BV(PCIE2);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode(); // finding: no-wake-source SLEEP proven error
    }
}
