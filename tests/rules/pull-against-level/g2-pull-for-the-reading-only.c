// device: msp430g2231
// board: P1.4: { driven: low }
// The resistor is on while the pin is read.
#include <msp430.h>

static volatile unsigned char seen;

static unsigned char look(unsigned char mask)
{
    unsigned char level;

    P1OUT |= mask;
    P1REN |= mask;
    level = P1IN & mask;
    P1REN &= (unsigned char)~mask;
    return level;
}

int main(void)
{
    WDTCTL = WDTPW | WDTTMSEL | WDTCNTCL | WDTSSEL;
    IE1 = WDTIE;
    for (;;) {
        seen = look(BIT4);
        __bis_SR_register(LPM3_bits | GIE); // clean: pull-against-level P1.4
    }
}

__attribute__((interrupt(WDT_VECTOR))) void on_interval(void)
{
    __bic_SR_register_on_exit(LPM3_bits);
}
