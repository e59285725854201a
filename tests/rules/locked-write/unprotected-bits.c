// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/power.h>
#include <avr/wdt.h>

// The interrupt bit of the watchdog needs no unlock.
int main(void)
{
    WDTCSR |= _BV(WDIE);
    for (;;) {
        sleep_mode();
    }
}
