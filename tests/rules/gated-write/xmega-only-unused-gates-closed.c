// device: atxmega128a1u
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TCD1_OVF_vect)

static void close_gates(void)
{
    PR.PRPC = 0x7F;
    PR.PRPD = 0x7F & ~PR_TC1_bm;
    PR.PRPE = 0x7F;
    PR.PRPF = 0x7F;
}

int main(void)
{
    close_gates();
    TCD1.PER = 1999;
    TCD1.INTCTRLA = TC_OVFINTLVL_LO_gc;
    TCD1.CTRLA = TC_CLKSEL_DIV1024_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    sei();
    for (;;) {
        sleep_mode();
    }
}
