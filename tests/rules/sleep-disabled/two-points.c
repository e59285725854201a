// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// One sleep works, the other does not.
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) {
        sleep_mode();
        PORTB ^= 1;
        sleep_cpu(); // finding: sleep-disabled SLEEP proven error
    }
}
