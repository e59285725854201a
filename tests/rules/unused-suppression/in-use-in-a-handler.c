// device: msp430g2231
// rules: pending-wake, busy-wait-delay, suppression-without-reason, unused-suppression
// hertz: 1000000
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    // powerlint: allow busy-wait-delay (some two presses a year)
    __delay_cycles(20000);
    P1IFG = 0;
}
