// device: msp430f5529
// Under automatic control the supervisor is fast while the part is awake, and rests asleep.
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
    SVSMLCTL = SVSLE | SVSLFP | SVSLMD | SVSMLACE;
    PMMCTL0_H = 0;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE); // clean: full-power-regulator SVSL SVSH
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
