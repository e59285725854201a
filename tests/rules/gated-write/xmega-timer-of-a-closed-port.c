// device: atxmega32a4u
// All gates of port C are closed to save current; one of its timers is needed all the same.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TCC0_OVF_vect)

int main(void)
{
    PR.PRPC = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    TCC0.PER = 1999; // finding: gated-write TCC0.CTRLA TCC0.INTCTRLA TCC0.PER proven
    TCC0.INTCTRLA = TC_OVFINTLVL_LO_gc;
    TCC0.CTRLA = TC_CLKSEL_DIV1024_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    sei();
    for (;;) {
        sleep_mode();
    }
}
