// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/power.h>
#include <avr/wdt.h>

// Switching the watchdog's reset off needs the timed sequence.
int main(void)
{
    wdt_enable(WDTO_1S);
    MCUSR = 0;
    WDTCSR = 0; // finding: locked-write WDTCSR
    for (;;) {
        sleep_mode();
    }
}
