// device: msp430fr5969
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = BIT1;
    P1REN = BIT1;
    PM5CTL0 &= ~LOCKLPM5;
    P1IES = BIT1;
    P1IFG = 0;
    P1IE = BIT1;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L |= PMMREGOFF_L;
    PMMCTL0_H = 0;
    __bis_SR_register(LPM4_bits | GIE); // clean: no-wake-source SLEEP
    for (;;)
        ;
}
