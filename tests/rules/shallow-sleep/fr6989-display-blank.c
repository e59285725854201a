// device: msp430fr6989
// A controller that is on with its segments off shows nothing: it holds nobody back.
#include <msp430fr6989.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    LCDCPCTL0 = 0x000F;
    LCDCCTL0 = LCDSSEL | LCDPRE__16 | LCDLP;
    LCDCCTL0 |= LCDON;
    PM5CTL0 &= ~LOCKLPM5;
    P1IE = BIT0;

    for (;;)
        __bis_SR_register(LPM3_bits | GIE); // finding: shallow-sleep proven warning {{lpm4}}
}

__attribute__((interrupt(PORT1_VECTOR))) void on_pin(void)
{
    P1IFG = 0;
}
