// device: msp430g2553
// The write that puts the CPU to sleep is the one that lets interrupts through: none can come in between.
#include <msp430.h>

static volatile unsigned char is_pressed;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1IE = BIT3;
    for (;;) {
        __disable_interrupt();
        while (!is_pressed) {
            __bis_SR_register(LPM4_bits | GIE); // clean: check-then-sleep-race is_pressed
            __disable_interrupt();
        }
        is_pressed = 0;
        __enable_interrupt();
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    is_pressed = 1;
    __bic_SR_register_on_exit(LPM4_bits);
}
