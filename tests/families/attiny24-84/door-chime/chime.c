#include "chime.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#define SPEAKER PB2 /* OC0A */
#define HALF_PERIODS_OF_A_NOTE 600

static volatile uint16_t left;

ISR(TIM0_COMPA_vect)
{
    left--;
}

void chime_init(void)
{
    PORTA = 0;
    DDRA = 0xFF;
    PORTB = 0;
    DDRB = _BV(PB0) | _BV(PB1) | _BV(SPEAKER);
    ACSR = _BV(ACD);
    power_all_disable();
    sei();
}

void chime_play(uint8_t half_period)
{
    power_timer0_enable();
    left = HALF_PERIODS_OF_A_NOTE;
    OCR0A = half_period;
    TCCR0A = _BV(COM0A0) | _BV(WGM01);
    TIMSK0 = _BV(OCIE0A);
    TCCR0B = _BV(CS01);

    set_sleep_mode(SLEEP_MODE_IDLE);
    cli();
    while (left > 0) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
}

void chime_stop(void)
{
    TCCR0B = 0;
    TIMSK0 = 0;
    TCCR0A = 0;
    power_timer0_disable();
}
