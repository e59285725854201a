// device: msp430g2553
// The status register's bits put the CPU to sleep, and the one that lets interrupts through is not among them.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1REN = BIT3;
    P1OUT = BIT3;
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits); // finding: no-wake-source SLEEP proven error {{interrupts are off}}
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    __bic_SR_register_on_exit(LPM4_bits);
}
