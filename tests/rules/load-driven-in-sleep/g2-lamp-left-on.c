// device: msp430g2553
// board: P1.0: { load: "lamp", active: high, milliamps: 5 }
#include <msp430.h>

#define LAMP BIT0
#define KEY BIT3

static volatile unsigned presses;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = KEY;
    P1REN = KEY;
    P1DIR = LAMP;
    P1IE = KEY;
    for (;;) {
        P1OUT |= LAMP; // finding: load-driven-in-sleep P1.0 proven {{5 mA}}
        presses = 0;
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    presses++;
    __bic_SR_register_on_exit(LPM4_bits);
}
