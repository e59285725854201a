#include "gauge.h"

#include <avr/interrupt.h>
#include <avr/sleep.h>

#include "pins.h"

static volatile uint16_t sample;
static volatile uint8_t is_done;

ISR(ADCA_CH0_vect)
{
    sample = ADCA.CH0.RES;
    is_done = 1;
}

/* The converter's clock stops below idle. */
uint16_t gauge_read(void)
{
    PORTC.OUTSET = SUPPLY_bm;
    PR.PRPA &= (uint8_t)~PR_ADC_bm;
    ADCA.REFCTRL = ADC_REFSEL_INTVCC_gc;
    ADCA.PRESCALER = ADC_PRESCALER_DIV32_gc;
    ADCA.CH0.CTRL = ADC_CH_INPUTMODE_SINGLEENDED_gc;
    ADCA.CH0.MUXCTRL = ADC_CH_MUXPOS_PIN0_gc;
    ADCA.CH0.INTCTRL = ADC_CH_INTLVL_LO_gc;
    ADCA.CTRLA = ADC_ENABLE_bm;
    is_done = 0;
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
    set_sleep_mode(SLEEP_SMODE_PSAVE_gc);

    ADCA.CTRLA = 0;
    PR.PRPA |= PR_ADC_bm;
    PORTC.OUTCLR = SUPPLY_bm;
    return sample;
}
