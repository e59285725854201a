// device: msp430g2231
// flags: -Wall
// A probe in a flower pot: pressing its key lights a lamp if the soil is dry.
#include <msp430.h>

#include "soil.h"

#define KEY BIT3
#define LAMP BIT0

static void park_pins(void)
{
    P1OUT = KEY;
    P1REN = KEY;
    P1DIR = (unsigned char)~(KEY | SOIL);
    P2SEL = 0;
    P2OUT = 0;
    P2DIR = BIT6; // finding: floating-pin P2.7 proven warning
}

int main(void)
{
    WDTCTL = WDTHOLD; // finding: locked-write WDTCTL proven
    park_pins();
    soil_init();
    P1IES |= KEY;
    P1IFG = 0;
    P1IE = KEY;

    for (;;) {
        _BIS_SR(LPM0_bits | GIE); // finding: shallow-sleep proven warning {{lpm4}}
        if (soil_is_dry()) {
            P1OUT |= LAMP;
            __delay_cycles(500000); // finding: busy-wait-delay main() proven
            P1OUT &= (unsigned char)~LAMP;
        }
    }
}

#pragma vector = PORT1_VECTOR
__interrupt void on_key(void)
{
    P1IFG &= (unsigned char)~KEY;
    LPM0_EXIT;
}
