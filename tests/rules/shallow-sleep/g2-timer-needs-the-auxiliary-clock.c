// device: msp430g2553
#include <msp430.h>

#define KEY BIT3

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    BCSCTL3 = LFXT1S_2;
    P1OUT = KEY;
    P1REN = KEY;
    P1IE = KEY;
    TA0CCR0 = 11999;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL_1 | MC_1;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE); // clean: shallow-sleep lpm3
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    __bic_SR_register_on_exit(LPM3_bits);
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_tick(void)
{
    __bic_SR_register_on_exit(LPM3_bits);
}
