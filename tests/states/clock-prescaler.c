// device: attiny85
// flags: -DF_CPU=8000000UL
// CLKPR written in the sequence that it asks for; a write without it does nothing.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

int main(void)
{
    CLKPR = 1 << CLKPCE;
    CLKPR = 1 << CLKPS1 | 1 << CLKPS0;
    CLKPR = 7;
    DDRB = 0x1F;
    clock_prescale_set(clock_div_4);
    PORTB = 0x20;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: CLKPR = 0x02, DDRB = 0x1f
}
