// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// From the second pass on the bit is 0.
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    sleep_enable();
    for (;;) {
        sleep_cpu(); // finding: sleep-disabled SLEEP proven error
        sleep_disable();
    }
}
