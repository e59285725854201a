// device: atmega1284p
// option: HFUSE.OCDEN = 0
// The bit must be written twice in a row.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    MCUCR |= _BV(JTD);
    MCUCR |= _BV(JTD);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode(); // clean: debug-kept-on HFUSE
    }
}
