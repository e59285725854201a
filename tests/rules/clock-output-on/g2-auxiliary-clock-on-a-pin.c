// device: msp430g2553
// Routed to a pin to trim the crystal, and left there.
#include <msp430.h>

static void show_clock(void)
{
    P1DIR |= BIT0;
    P1SEL |= BIT0; // finding: clock-output-on ACLK P1.0 proven warning
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    show_clock();
    TA0CTL = TASSEL_1 | MC_2 | TAIE;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE);
    }
}

__attribute__((interrupt(TIMER0_A1_VECTOR))) void on_round(void)
{
    TA0CTL &= (unsigned)~TAIFG;
}
