// device: attiny85
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/power.h>
#include <avr/wdt.h>

int main(void)
{
    CLKPR = 0x03; // finding: locked-write CLKPR
    for (;;) {
        sleep_mode();
    }
}
