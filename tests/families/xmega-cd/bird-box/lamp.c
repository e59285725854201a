#include "box.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t steps;

/* On and off by turns: two steps a flash. */
ISR(TCC1_OVF_vect)
{
    PORTC.OUTTGL = 1 << LAMP;
    if (--steps == 0)
        TCC1.CTRLA = TC_CLKSEL_OFF_gc;
}

void lamp_flash(uint8_t times)
{
    PR.PRPC = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC0_bm;
    steps = (uint8_t)(2 * times);
    TCC1.PER = 311;
    TCC1.INTCTRLA = TC_OVFINTLVL_LO_gc;
    TCC1.CTRLA = TC_CLKSEL_DIV1024_gc;
    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    cli();
    while (steps) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
    TCC1.INTCTRLA = 0;
    TCC1.CTRLA = TC_CLKSEL_OFF_gc;
    PORTC.OUTCLR = 1 << LAMP;
    PR.PRPC = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
}
