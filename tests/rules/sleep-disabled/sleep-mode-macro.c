// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    for (;;) {
        sleep_mode();
    }
    // clean: sleep-disabled SLEEP
}
