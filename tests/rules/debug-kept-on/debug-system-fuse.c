// device: atmega1284p
// option: HFUSE.OCDEN = 0
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE); // finding: debug-kept-on HFUSE proven warning {{HFUSE.OCDEN = 0 and HFUSE.JTAGEN = 0 and MCUCR.JTD = 0}}
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
