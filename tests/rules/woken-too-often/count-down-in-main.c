// device: atmega644p
// The main program counts down; sixteen times a quarter of a second are four seconds.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

static uint8_t left = 16;

static void watchdog_start(void)
{
    WDTCSR |= _BV(WDCE) | _BV(WDE);
    WDTCSR = _BV(WDIE) | _BV(WDP2); // finding: woken-too-often WDT proven {{15 of 16 times}}
}

int main(void)
{
    watchdog_start();
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        if (--left == 0) {
            left = 16;
            PORTA ^= _BV(PORTA0);
        }
        sleep_mode();
    }
}
