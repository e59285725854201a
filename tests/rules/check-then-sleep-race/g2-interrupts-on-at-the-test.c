// device: msp430g2553
#include <msp430.h>

static volatile unsigned char is_pressed;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1IE = BIT3;
    __enable_interrupt();
    for (;;) {
        if (!is_pressed)
            __bis_SR_register(LPM4_bits); // finding: check-then-sleep-race is_pressed proven warning
        is_pressed = 0;
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    is_pressed = 1;
    __bic_SR_register_on_exit(LPM4_bits);
}
