// device: atxmega32a4u
// A table closes the gates of all ports' peripherals, then the one timer in use gets its clock back.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TCD0_OVF_vect)

static volatile uint8_t *const gates[] = {&PR.PRPA, &PR.PRPB, &PR.PRPC, &PR.PRPD, &PR.PRPE, &PR.PRPF, &PR.PRGEN};

int main(void)
{
    for (uint8_t i = 0; i < sizeof gates / sizeof gates[0]; i++) {
        *gates[i] = 0x7F;
    }
    PR.PRPD &= (uint8_t)~PR_TC0_bm;
    TCD0.PER = 999;
    TCD0.INTCTRLA = TC_OVFINTLVL_LO_gc;
    TCD0.CTRLA = TC_CLKSEL_DIV64_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    sei();
    for (;;) {
        sleep_mode(); // clean: peripheral-clock-left-on ADCA TCC0 USARTD0
    }
}
