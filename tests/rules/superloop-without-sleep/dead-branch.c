// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) { // finding: superloop-without-sleep main()
        if (sizeof(int) > 2) {
            sleep_mode();
        }
        PORTB ^= 1;
    }
}
