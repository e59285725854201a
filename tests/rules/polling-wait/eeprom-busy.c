// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) {
        while (EECR & _BV(EEPE)) { // finding: polling-wait EECR {{EE_READY_vect}}
        }
        EEAR = 4;
        EEDR = 1;
        sleep_mode();
    }
}
