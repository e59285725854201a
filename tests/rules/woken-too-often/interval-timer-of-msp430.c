// device: msp430g2553
// The watchdog as an interval timer of 16 ms on a watch crystal; its longest interval is a second.
#include <msp430.h>

static volatile unsigned intervals;

__attribute__((interrupt(WDT_VECTOR))) void on_interval(void)
{
    if (++intervals == 64) {
        intervals = 0;
        __bic_SR_register_on_exit(LPM3_bits);
    }
}

int main(void)
{
    WDTCTL = WDT_ADLY_16; // finding: woken-too-often WDT proven {{63 of 64 times}}
    IE1 |= WDTIE;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE);
        P1OUT ^= BIT0;
    }
}
