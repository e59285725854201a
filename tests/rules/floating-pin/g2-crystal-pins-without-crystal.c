// device: msp430g2452
// The clock is switched to the internal slow oscillator, and the pins are left to the crystal's: whether such pads listen, no
// document says, so that is possible.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1DIR = 0xFF;
    P2DIR = (unsigned char)~(BIT6 | BIT7); // finding: floating-pin P2.6 P2.7 possible note
    BCSCTL3 = LFXT1S_2;
    TA0CCR0 = 11999;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL_1 | MC_1;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE);
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_tick(void)
{
}
