// device: atmega1284p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/power.h>
#include <avr/wdt.h>

int main(void)
{
    CLKPR = 0x80;
    CLKPR = 0x04;
    CLKPR = 0x08; // finding: locked-write CLKPR
    for (;;) {
        sleep_mode();
    }
}
