// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/power.h>
#include <avr/wdt.h>

int main(void)
{
    clock_prescale_set(clock_div_8);
    wdt_enable(WDTO_2S);
    wdt_disable();
    for (;;) {
        sleep_mode();
    }
}
