// device: atmega328p
// Entering the handler clears the flag.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT2_vect)

int main(void)
{
    PCMSK2 = _BV(PCINT18);
    PCICR = _BV(PCIE2);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
