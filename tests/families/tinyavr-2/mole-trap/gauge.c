#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include "gauge.h"

static volatile uint8_t is_converted;

ISR(ADC0_RESRDY_vect)
{
    ADC0.INTFLAGS = ADC_RESRDY_bm;
    is_converted = 1;
}

void gauge_init(void)
{
    ADC0.MUXPOS = ADC_MUXPOS_AIN4_gc;
}

uint16_t gauge_read(void)
{
    ADC0.CTRLA = ADC_ENABLE_bm | ADC_RUNSTDBY_bm;
    ADC0.INTCTRL = ADC_RESRDY_bm;
    is_converted = 0;
    ADC0.COMMAND = ADC_MODE_SINGLE_12BIT_gc | ADC_START_IMMEDIATE_gc;

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

    ADC0.INTCTRL = 0;
    ADC0.CTRLA = 0;
    return (uint16_t)ADC0.RESULT;
}
