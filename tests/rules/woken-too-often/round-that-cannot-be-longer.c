// device: msp430g2553
// The slow oscillator divided by eight, the timer's whole range: a quarter of an hour must be counted.
#include <msp430.h>

static volatile unsigned char rounds;

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_round(void)
{
    if (++rounds >= 21) {
        rounds = 0;
        __bic_SR_register_on_exit(LPM3_bits);
    }
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    BCSCTL1 |= DIVA_3;
    BCSCTL3 = LFXT1S_2;
    TA0CCR0 = 0xFFFF;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL_1 | ID_3 | MC_1 | TACLR; // clean: woken-too-often TA0
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE);
        P1OUT ^= BIT0;
    }
}
