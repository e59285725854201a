// device: atxmega32a4u
// The old oscillator goes off once the new one has taken over.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TCC0_OVF_vect)

static void run_at_32_megahertz(void)
{
    OSC.CTRL |= OSC_RC32MEN_bm;
    while (!(OSC.STATUS & OSC_RC32MRDY_bm)) {
    }
    CCP = CCP_IOREG_gc;
    CLK.CTRL = CLK_SCLKSEL_RC32M_gc;
    OSC.CTRL &= (uint8_t)~OSC_RC2MEN_bm;
}

int main(void)
{
    run_at_32_megahertz();
    TCC0.PER = 999;
    TCC0.INTCTRLA = TC_OVFINTLVL_LO_gc;
    TCC0.CTRLA = TC_CLKSEL_DIV64_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    sei();
    for (;;) {
        sleep_mode(); // clean: oscillator-kept-on RC2M RC32M
    }
}
