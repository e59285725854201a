// device: msp430g2553
// The handler does all the work, and the CPU goes round meanwhile.
#include <msp430.h>

static volatile unsigned ticks;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    TA0CCR0 = 9999;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL_2 | MC_1;
    __enable_interrupt();
    for (;;) { // finding: superloop-without-sleep main() proven
        P1OUT = (unsigned char)ticks;
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_tick(void)
{
    ticks++;
}
