// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/power.h>
#include <avr/wdt.h>

int main(void)
{
    WDTCSR = _BV(WDIE) | _BV(WDP2) | _BV(WDP1); // finding: locked-write WDTCSR
    for (;;) {
        sleep_mode();
    }
}
