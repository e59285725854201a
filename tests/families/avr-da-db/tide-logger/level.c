#include <avr/interrupt.h>
#include <avr/sleep.h>

#include "board.h"
#include "level.h"

#define READINGS 64

static uint16_t readings[READINGS];
static uint8_t next;
static volatile uint8_t is_converted;

ISR(ADC0_RESRDY_vect)
{
    ADC0.INTFLAGS = ADC_RESRDY_bm;
    is_converted = 1;
}

void level_init(void)
{
    /* On request only: between conversions the reference is off. */
    VREF.ADC0REF = VREF_REFSEL_2V048_gc;
    ADC0.MUXPOS = ADC_MUXPOS_AIN3_gc;
}

void level_log(void)
{
    PORTC.OUTSET = SENSOR_SUPPLY_bm;
    ADC0.CTRLA = ADC_ENABLE_bm | ADC_RUNSTBY_bm;
    ADC0.INTCTRL = ADC_RESRDY_bm;
    is_converted = 0;
    ADC0.COMMAND = ADC_STCONV_bm;

    set_sleep_mode(SLEEP_MODE_STANDBY);
    for (;;) {
        cli();
        if (is_converted) {
            break;
        }
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
    }
    sei();

    PORTC.OUTCLR = SENSOR_SUPPLY_bm;
    ADC0.INTCTRL = 0;
    ADC0.CTRLA = 0;
    readings[next] = ADC0.RES;
    next = (uint8_t)((next + 1) % READINGS);
}
