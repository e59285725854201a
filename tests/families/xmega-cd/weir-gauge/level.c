#include "weir.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t is_done;

ISR(ADCA_CH0_vect)
{
    is_done = 1;
}

uint16_t level_read(void)
{
    uint16_t level;

    PORTD.OUTSET = 1 << SUPPLY_PIN;
    PR.PRPA = PR_AC_bm;
    ADCA.PRESCALER = ADC_PRESCALER_DIV16_gc;
    ADCA.CH0.CTRL = ADC_CH_INPUTMODE_SINGLEENDED_gc;
    ADCA.CH0.MUXCTRL = ADC_CH_MUXPOS_PIN4_gc;
    ADCA.CH0.INTCTRL = ADC_CH_INTLVL_LO_gc;
    is_done = 0;
    ADCA.CTRLA = ADC_ENABLE_bm;
    ADCA.CH0.CTRL |= ADC_CH_START_bm;
    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    cli();
    while (!is_done) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
    level = ADCA.CH0.RES;
    ADCA.CH0.INTCTRL = 0;
    ADCA.CTRLA = 0;
    PR.PRPA = PR_ADC_bm | PR_AC_bm;
    PORTD.OUTCLR = 1 << SUPPLY_PIN;
    return level;
}
