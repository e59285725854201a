// device: msp430g2452
// SMCLK, which drives the timer, stands still in the mode.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    TA0CCR0 = 9999;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL_2 | MC_1;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE); // finding: no-wake-source SLEEP proven error {{TIMER0_A0_VECTOR is enabled but cannot}}
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_tick(void)
{
    __bic_SR_register_on_exit(LPM3_bits);
}
