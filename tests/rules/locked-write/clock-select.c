// device: atxmega32e5
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    OSC.CTRL |= OSC_RC32MEN_bm;
    while (!(OSC.STATUS & OSC_RC32MRDY_bm)) {
    }
    CLK.CTRL = CLK_SCLKSEL_RC32M_gc; // finding: locked-write CLK.CTRL proven warning {{CCP}}
    CCP = CCP_IOREG_gc;
    CLK.PSCTRL = CLK_PSADIV_4_gc;
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
