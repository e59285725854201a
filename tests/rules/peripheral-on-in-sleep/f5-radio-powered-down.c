// device: cc430f6137
// Powered down, the radio draws nothing.
#include <msp430.h>

static void command(unsigned char strobe)
{
    while (!(RF1AIFCTL1 & RFINSTRIFG))
        ;
    RF1AINSTRB = strobe;
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = BIT4;
    P1REN = BIT4;
    P1IFG = 0;
    P1IE = BIT4;
    command(RF_SRES);
    command(RF_SPWD); // clean: peripheral-on-in-sleep RF1A
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
