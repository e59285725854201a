// device: msp430fr6989
// What the display shows is in use: no deeper mode than LPM3 keeps it.
#include <msp430fr6989.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    LCDCPCTL0 = 0x000F;
    LCDCCTL0 = LCDSSEL | LCDPRE__16 | LCD4MUX | LCDLP;
    LCDCCTL0 |= LCDON;
    PM5CTL0 &= ~LOCKLPM5;
    P1IE = BIT0;

    for (;;)
        __bis_SR_register(LPM3_bits | GIE); // clean: shallow-sleep lpm3
}

__attribute__((interrupt(PORT1_VECTOR))) void on_pin(void)
{
    P1IFG = 0;
}
