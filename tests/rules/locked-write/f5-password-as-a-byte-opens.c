// device: msp430f5438a
// The password as a byte opens the registers until another byte takes its place; as part of a word it counts as well.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PJDIR = 0xFFFF;
    PADIR = 0xFFFF;
    PBDIR = 0xFFFF;
    PCDIR = 0xFFFF;
    PDDIR = 0xFFFF;
    P1OUT = BIT4;
    P1REN = BIT4;
    P1IFG = 0;
    P1IE = BIT4;
    PMMCTL0_H = PMMPW_H;
    SVSMLCTL = 0;
    PMMCTL0_H = 0;
    PMMCTL0 = PMMPW | PMMCOREV_1;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
