#include "button.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define BUTTON PA1

static volatile uint8_t pressed;

ISR(PCINT0_vect)
{
    pressed = 1;
}

void button_init(void)
{
    DDRA &= (uint8_t)~_BV(BUTTON);
    PORTA |= _BV(BUTTON);
    PCMSK0 = _BV(PCINT1);
    GIMSK = _BV(PCIE0);
}

void button_wait(void)
{
    pressed = 0;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    cli();
    while (!pressed) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
}
