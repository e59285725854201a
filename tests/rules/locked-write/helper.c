// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/power.h>
#include <avr/wdt.h>

static void set(volatile uint8_t *where, uint8_t value)
{
    *where = value; // finding: locked-write CLKPR proven
}

int main(void)
{
    set(&CLKPR, 0x04); // related: locked-write {{set()}}
    for (;;) {
        sleep_mode();
    }
}
