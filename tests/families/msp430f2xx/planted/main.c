// device: msp430f2013
// flags: -Wall
// Watches the acid of a pool with a probe at the sigma-delta converter, and lights a lamp where it is wrong. The coin cell is empty in a week.
#include <msp430.h>

#include "acid.h"
#include "lamp.h"

static void park_pins(void)
{
    P1OUT = 0;
    P1DIR = 0xFF & ~PROBE;
    P2SEL = 0;
    P2OUT = 0;
    P2DIR = BIT7; // finding: floating-pin P2.6 proven warning
}

int main(void)
{
    WDTCTL = WDTPW + WDTHOLD;
    park_pins();
    BCSCTL3 |= LFXT1S_2;
    acid_init();
    lamp_init();
    TACCR0 = 59999;
    TACCTL0 = CCIE;
    TACTL = TASSEL_1 | ID_3 | MC_1 | TACLR;

    for (;;) {
        _BIS_SR(LPM1_bits | GIE); // finding: shallow-sleep proven warning {{lpm3}}
        if (!acid_is_right())
            lamp_flash();
    }
}

#pragma vector = TIMERA0_VECTOR
__interrupt void on_time(void)
{
    _BIC_SR_IRQ(LPM3_bits);
}
