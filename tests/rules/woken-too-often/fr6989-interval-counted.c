// device: msp430fr6989
// The interval timer is set to a second, of which sixteen are counted: it could do with one interval of sixteen.
#include <msp430fr6989.h>

static volatile unsigned char intervals;

int main(void)
{
    PJSEL0 |= BIT4 | BIT5;
    PM5CTL0 &= ~LOCKLPM5;
    CSCTL0_H = CSKEY_H;
    CSCTL2 = SELA__LFXTCLK | SELS__DCOCLK | SELM__DCOCLK;
    CSCTL3 = DIVA__1 | DIVS__1 | DIVM__1;
    CSCTL0_H = 0;
    SFRIE1 = WDTIE;
    WDTCTL = WDTPW | WDTTMSEL | WDTCNTCL | WDTSSEL__ACLK | WDTIS__32K; // finding: woken-too-often WDT
    for (;;) {
        __disable_interrupt();
        while (intervals < 16) {
            __bis_SR_register(LPM3_bits | GIE);
            __disable_interrupt();
        }
        intervals = 0;
        __enable_interrupt();
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(WDT_VECTOR))) void on_interval(void)
{
    intervals++;
    __bic_SR_register_on_exit(LPM3_bits);
}
