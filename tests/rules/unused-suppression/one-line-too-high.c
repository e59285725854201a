// device: msp430g2553
// rules: busy-wait-delay, suppression-without-reason, unused-suppression
// hertz: 1000000
// A statement that came in between took the comment's place.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
        // powerlint: allow busy-wait-delay (the relay bounces for 20 ms)
        P1OUT ^= BIT0; // finding@-1: unused-suppression busy-wait-delay
        __delay_cycles(20000); // finding: busy-wait-delay main()
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    __bic_SR_register_on_exit(LPM4_bits);
}
