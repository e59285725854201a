// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static void rest(void)
{
    sleep_enable();
    sleep_cpu();
    sleep_disable();
}

static void (*const idle)(void) = rest;

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) {
        idle();
    }
}
