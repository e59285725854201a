// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/power.h>
#include <avr/wdt.h>

int main(void)
{
    WDTCSR |= _BV(WDCE) | _BV(WDE);
    WDTCSR = 0;
    for (;;) {
        sleep_mode();
    }
}
