// device: msp430fr5969
// Until the lock is opened the input buffers are off: such pins cost nothing, wired or not.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE); // clean: floating-pin P1.0 P2.7 P3.3 P4.7 PJ.0 PJ.6
}
