#include "horn.h"

#include <avr/io.h>
#include <util/delay.h>

void horn_prepare(void)
{
    PR.PRGEN = PR_RTC_bm | PR_EVSYS_bm;
    PR.PRPA = PR_ADC_bm | PR_AC_bm;
    PR.PRPC = PR_TWI_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPD = PR_USART0_bm | PR_SPI_bm;
    PR.PRPE = PR_TWI_bm | PR_TC0_bm;
    TCC1.PER = 999; // finding: gated-write TCC1.PER proven
    TCD0.PER = 499;
    TCD0.CTRLA = TC_CLKSEL_DIV8_gc; // finding: peripheral-on-in-sleep TCD0 proven
}

void horn_sound(void)
{
    PORTD.OUTSET = 1 << 1;
    _delay_ms(40); // finding: busy-wait-delay horn_sound() proven
    PORTD.OUTCLR = 1 << 1;
}
