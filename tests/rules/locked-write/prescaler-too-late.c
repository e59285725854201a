// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/power.h>
#include <avr/wdt.h>

int main(void)
{
    CLKPR = _BV(CLKPCE);
    PORTB = 1;
    PORTC = 1;
    PORTD = 1;
    CLKPR = _BV(CLKPS2); // finding: locked-write CLKPR
    for (;;) {
        sleep_mode();
    }
}
