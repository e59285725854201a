#include "tap.h"

#include <avr/io.h>
#include <avr/power.h>

#include "wake.h"

#define VALVE PB0
#define TICKS_OPEN 75

static uint8_t ticks_left;
static uint8_t openings;

void tap_init(void)
{
    PORTA = 0;
    DDRA = _BV(PA0) | _BV(PA1);
    PORTB = 0;
    DDRB = 0xFF;
    ACSR = _BV(ACD);
    power_all_disable();
}

void tap_open(void)
{
    openings++;
    ticks_left = TICKS_OPEN;
    PORTB |= _BV(VALVE);
    wake_tick(1);
}

void tap_tick(void)
{
    if (ticks_left > 0 && --ticks_left == 0) {
        PORTB &= (uint8_t)~_BV(VALVE);
        wake_tick(0);
    }
}

uint8_t tap_openings(void)
{
    return openings;
}
