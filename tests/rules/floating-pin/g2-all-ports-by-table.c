// device: msp430g2553
// package: tssop20
// The third port's pads lie inside this package: they float like others, and are driven like others.
#include <msp430.h>
#include <stdint.h>

static const struct {
    volatile uint8_t *direction, *output;
} ports[] = {
    {&P1DIR, &P1OUT},
    {&P2DIR, &P2OUT},
    {&P3DIR, &P3OUT},
};

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P2SEL = 0;
    for (uint8_t i = 0; i < sizeof ports / sizeof ports[0]; i++) {
        *ports[i].output = 0;
        *ports[i].direction = 0xFF;
    }
    P1DIR &= (uint8_t)~BIT3;
    P1OUT |= BIT3;
    P1REN |= BIT3;
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE); // clean: floating-pin P1.0..P1.7 P2.0..P2.7 P3.0..P3.7
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
