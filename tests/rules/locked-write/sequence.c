// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/power.h>
#include <avr/wdt.h>

int main(void)
{
    CLKPR = _BV(CLKPCE);
    CLKPR = _BV(CLKPS2);
    for (;;) {
        sleep_mode();
    }
}
