// device: msp430f5513
// The multiplied clock of the USB module, switched on before anybody is plugged in.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PJDIR = 0xFFFF;
    PADIR = 0xFFFF;
    PBDIR = 0xFFFF;
    PCDIR = 0xFFFF;
    P1OUT = BIT4;
    P1REN = BIT4;
    P1IFG = 0;
    P1IE = BIT4;
    USBKEYPID = USBKEY;
    USBPLLCTL = UPLLEN; // finding: oscillator-kept-on USBPLL proven warning
    USBKEYPID = 0;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
