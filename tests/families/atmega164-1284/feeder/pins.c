#include "pins.h"

#include <avr/io.h>
#include <avr/power.h>

struct port_setting {
    volatile uint8_t *direction;
    volatile uint8_t *output;
    uint8_t inputs;
    uint8_t pulled_or_high;
};

/* Everything that is not named here is wired to nothing and driven low. */
static const struct port_setting settings[] = {
    { &DDRA, &PORTA, _BV(WEIGHT_INPUT), 0 },
    { &DDRB, &PORTB, _BV(PERCH_SWITCH), _BV(PERCH_SWITCH) },
    { &DDRC, &PORTC, _BV(READER_PRESENT), _BV(READER_PRESENT) },
    { &DDRD, &PORTD, 0, _BV(READER_OUT) },
};

void pins_init(void)
{
    for (uint8_t i = 0; i < sizeof settings / sizeof settings[0]; i++) {
        *settings[i].output = settings[i].pulled_or_high;
        *settings[i].direction = (uint8_t)~settings[i].inputs;
    }
    DIDR0 = _BV(ADC2D);
    ACSR = _BV(ACD);
    power_all_disable();
}
