#include "node.h"

static volatile uint8_t naps_left;

ISR(WDT_vect)
{
    if (naps_left)
        naps_left--;
}

void node_start(void)
{
    DDRB = _BV(SENSOR_SUPPLY) | _BV(ALARM);
    PORTC = 0x3E;
    PORTD = 0xFF;
    ACSR = _BV(ACD);
    DIDR0 = _BV(ADC0D);
}

void node_alarm(void)
{
    for (uint8_t i = 0; i < 3; i++) {
        PORTB |= _BV(ALARM);
        for (volatile uint8_t wait = 100; wait; wait--)
            ;
        PORTB &= ~_BV(ALARM);
    }
}

void node_rest(uint8_t naps)
{
    naps_left = naps;
    cli();
    WDTCSR = _BV(WDCE) | _BV(WDE);
    WDTCSR = _BV(WDIE) | _BV(WDP3) | _BV(WDP0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    do {
        sleep_mode(); // state: DDRB = 0x03, PORTB = 0x00, ADCSRA = 0x06, SMCR = 0x05, DIDR0 = 0x01
    } while (naps_left);
    cli();
    WDTCSR = _BV(WDCE) | _BV(WDE);
    WDTCSR = 0;
    sei();
}
