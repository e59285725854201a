// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    if (PIND & 1) {
        sleep_enable();
    }
    for (;;) {
        sleep_cpu(); // finding: sleep-disabled SLEEP possible note
    }
}
