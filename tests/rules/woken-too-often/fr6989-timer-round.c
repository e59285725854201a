// device: msp430fr6989
// A round of the timer is two seconds of the crystal; divided by eight and more it would be a minute's third.
#include <msp430fr6989.h>

static volatile unsigned char rounds;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PJSEL0 |= BIT4 | BIT5;
    PM5CTL0 &= ~LOCKLPM5;
    CSCTL0_H = CSKEY_H;
    CSCTL2 = SELA__LFXTCLK | SELS__DCOCLK | SELM__DCOCLK;
    CSCTL3 = DIVA__1 | DIVS__1 | DIVM__1;
    CSCTL0_H = 0;
    TA0CCR0 = 65535; // finding: woken-too-often TA0
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL__ACLK | MC__UP | TACLR;
    for (;;) {
        __disable_interrupt();
        while (rounds < 10) {
            __bis_SR_register(LPM3_bits | GIE);
            __disable_interrupt();
        }
        rounds = 0;
        __enable_interrupt();
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_round(void)
{
    rounds++;
    __bic_SR_register_on_exit(LPM3_bits);
}
