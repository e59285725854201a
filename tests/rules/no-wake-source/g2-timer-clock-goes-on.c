// device: msp430g2452
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    BCSCTL3 = LFXT1S_2;
    TA0CCR0 = 11999;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL_1 | MC_1;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE); // clean: no-wake-source SLEEP
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_tick(void)
{
    __bic_SR_register_on_exit(LPM3_bits);
}
