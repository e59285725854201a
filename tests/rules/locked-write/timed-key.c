// device: atxmega32a4u
// The key opens the protected registers for four cycles, and one write ends it.
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/interrupt.h>

ISR(RTC_OVF_vect)
{
}

int main(void)
{
    OSC.CTRL |= OSC_RC32MEN_bm;
    while (!(OSC.STATUS & OSC_RC32MRDY_bm)) {
    }
    CLK.CTRL = CLK_SCLKSEL_RC32M_gc; // finding: locked-write CLK.CTRL proven
    CCP = CCP_IOREG_gc;
    CLK.PSCTRL = CLK_PSADIV_4_gc;
    CCP = CCP_IOREG_gc;
    WDT.CTRL = WDT_PER_8KCLK_gc | WDT_ENABLE_bm; // finding: locked-write WDT.CTRL proven
    SLEEP.CTRL = SLEEP_SMODE_PSAVE_gc | SLEEP_SEN_bm;
    sei();
    for (;;) {
        sleep_cpu();
    }
}
