// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    sleep_enable();
    SMCR = _BV(SM1);
    for (;;) {
        sleep_cpu(); // finding: sleep-disabled SLEEP proven error
    }
}
