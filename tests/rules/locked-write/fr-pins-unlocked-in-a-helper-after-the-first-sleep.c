// device: msp430fr5969
// Opened late is opened: what the pins do until then is the program's affair.
#include <msp430.h>

static void open_pins(void)
{
    PM5CTL0 &= ~LOCKLPM5;
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = 0;
    P1DIR = 0xFF;
    SFRIE1 = WDTIE;
    WDTCTL = WDT_ADLY_1000;
    __bis_SR_register(LPM3_bits | GIE);
    open_pins();
    for (;;)
        __bis_SR_register(LPM3_bits | GIE);
}

__attribute__((interrupt(WDT_VECTOR))) void on_second(void)
{
    __bic_SR_register_on_exit(LPM3_bits);
}
