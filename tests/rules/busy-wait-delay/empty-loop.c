// device: atmega328p
// flags: -DF_CPU=1000000UL
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

static void settle(void)
{
    for (volatile uint16_t i = 0; i < 20000; i++) { // finding: busy-wait-delay settle()
    }
}

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) {
        settle();
        sleep_mode();
    }
}
