#include "board.h"

#include <avr/io.h>
#include <avr/power.h>

#define EVERY_PIN 0xFF

void board_init(void)
{
    /* What is wired to nothing is driven low, and the motor stands still. */
    PORTB = 0;
    DDRB = EVERY_PIN;
    PORTC = 0;
    DDRC = (uint8_t)~_BV(THERMISTOR);
    PORTD = _BV(BUTTON);
    DDRD = (uint8_t)~_BV(BUTTON);

    /* The thermistor's pin is never read as a digital one. */
    DIDR0 = _BV(ADC0D);
    ACSR = _BV(ACD);

    power_all_disable();
}
