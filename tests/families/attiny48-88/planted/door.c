#include "door.h"

#include <avr/io.h>
#include <avr/power.h>
#include <util/delay.h>

#define LIGHT 0 /* PC0 */
#define DAWN 300
#define MOTOR PB1

volatile uint8_t door_is_pushed;

void door_init(void)
{
    power_adc_enable();
    ADMUX = _BV(REFS0) | LIGHT;
    ADCSRA = _BV(ADEN) | _BV(ADPS1) | _BV(ADPS0); // finding: peripheral-on-in-sleep ADC proven
}

void door_check(void)
{
    ADCSRA |= _BV(ADSC);
    while (ADCSRA & _BV(ADSC)) // finding: polling-wait ADCSRA proven
        ;
    if (ADC > DAWN && door_is_pushed) {
        PORTB |= _BV(MOTOR);
        _delay_ms(800); // finding: busy-wait-delay door_check() proven
        PORTB &= (uint8_t)~_BV(MOTOR);
    }
}
