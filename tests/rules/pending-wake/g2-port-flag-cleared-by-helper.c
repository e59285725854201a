// device: msp430g2452
// One helper serves both ports.
#include <msp430.h>
#include <stdint.h>

static volatile uint8_t pressed;

static uint8_t taken(volatile uint8_t *flags, uint8_t mask)
{
    uint8_t set = *flags & mask;

    *flags &= (uint8_t)~mask;
    return set;
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1REN = BIT4;
    P1OUT = BIT4;
    P1IE = BIT4;
    P2REN = BIT1;
    P2OUT = BIT1;
    P2IE = BIT1;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE); // clean: pending-wake P1IFG P2IFG
        if (pressed)
            P1DIR ^= BIT0;
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_port1(void)
{
    pressed = taken(&P1IFG, BIT4);
    __bic_SR_register_on_exit(LPM4_bits);
}

__attribute__((interrupt(PORT2_VECTOR))) void on_port2(void)
{
    pressed = taken(&P2IFG, BIT1);
    __bic_SR_register_on_exit(LPM4_bits);
}
