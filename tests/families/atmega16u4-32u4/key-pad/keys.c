#include "keys.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t changed;

ISR(PCINT0_vect)
{
    changed = 1;
}

void keys_init(void)
{
    PCMSK0 = _BV(PCINT4) | _BV(PCINT5) | _BV(PCINT6) | _BV(PCINT7);
    PCICR = _BV(PCIE0);
    sei();
}

uint8_t keys_wait(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    cli();
    while (!changed) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    changed = 0;
    sei();
    return (uint8_t)~PINB >> 4;
}
