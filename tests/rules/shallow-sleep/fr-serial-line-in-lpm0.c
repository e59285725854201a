// device: msp430fr5969
// The interface asks for its clock when a byte comes, and needs none in between.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P2SEL1 |= BIT0 | BIT1;
    PM5CTL0 &= ~LOCKLPM5;
    UCA0CTLW0 = UCSWRST | UCSSEL__SMCLK;
    UCA0BRW = 6;
    UCA0CTLW0 &= ~UCSWRST;
    UCA0IE = UCRXIE;
    for (;;)
        __bis_SR_register(LPM0_bits | GIE); // finding: shallow-sleep proven warning {{lpm4}} // related: shallow-sleep {{waking from lpm4 takes 7 µs (at most 10 µs)}}
}

__attribute__((interrupt(USCI_A0_VECTOR))) void on_byte(void)
{
    P1OUT = UCA0RXBUF;
}
