// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/power.h>
#include <avr/wdt.h>

int main(void)
{
    if (PIND & 1) {
        CLKPR = _BV(CLKPCE);
    }
    CLKPR = 0x02; // finding: locked-write CLKPR possible note
    for (;;) {
        sleep_mode();
    }
}
