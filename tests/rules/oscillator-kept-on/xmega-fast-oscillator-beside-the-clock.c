// device: atxmega32a4u
// The CPU was to change over to 32 MHz; that was given up, and the oscillator forgotten.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TCC0_OVF_vect)

int main(void)
{
    OSC.CTRL |= OSC_RC32MEN_bm; // finding: oscillator-kept-on RC32M proven
    TCC0.PER = 999;
    TCC0.INTCTRLA = TC_OVFINTLVL_LO_gc;
    TCC0.CTRLA = TC_CLKSEL_DIV64_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    sei();
    for (;;) {
        sleep_mode(); // clean: oscillator-kept-on RC2M
    }
}
