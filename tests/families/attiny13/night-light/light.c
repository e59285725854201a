#include "light.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

/* The divider of resistor and light-dependent resistor, and the pin that feeds it. */
#define SENSE_CHANNEL 1 /* PB2 */
#define FEED PB4

static volatile uint8_t is_done;

ISR(ADC_vect)
{
    is_done = 1;
}

void light_init(void)
{
    DDRB |= _BV(FEED);
    PORTB &= (uint8_t)~_BV(FEED);
    DIDR0 = _BV(ADC1D);
    ACSR = _BV(ACD);
    PRR = _BV(PRTIM0);
}

uint16_t light_read(void)
{
    uint16_t level;

    PORTB |= _BV(FEED);
    ADMUX = SENSE_CHANNEL;
    ADCSRA = _BV(ADEN) | _BV(ADIE) | _BV(ADPS1) | _BV(ADPS0);
    is_done = 0;
    set_sleep_mode(SLEEP_MODE_ADC);
    cli();
    while (!is_done) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
    level = ADC;
    ADCSRA = 0;
    PORTB &= (uint8_t)~_BV(FEED);
    return level;
}
