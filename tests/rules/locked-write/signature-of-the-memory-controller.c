// device: attiny1614
// The signature that lets the memory be programmed does not open the protected registers.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    CCP = CCP_SPM_gc;
    CLKCTRL.MCLKCTRLB = CLKCTRL_PEN_bm; // finding: locked-write CLKCTRL.MCLKCTRLB proven warning
    _PROTECTED_WRITE(CLKCTRL.OSC20MCTRLA, CLKCTRL_RUNSTDBY_bm);
    for (;;) {
        sleep_mode(); // state: CLKCTRL.MCLKCTRLB = 0b0001_0001
        // state@-1: CLKCTRL.OSC20MCTRLA = 0b0000_0010
    }
}
