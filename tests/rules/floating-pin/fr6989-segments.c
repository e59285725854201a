// device: msp430fr6989
// The display's controller takes the pins of the segments that it has been given, whatever the port's registers say; a common line is
// taken by the port's selection. Of the rest, one was forgotten.
#include <msp430fr6989.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PAOUT = 0;
    PADIR = 0xFFFF;
    PBOUT = 0;
    PBDIR = 0x0FFF;
    PCOUT = 0;
    PCDIR = 0x870E; // finding: floating-pin P5.0 proven warning
    PDOUT = 0;
    PDDIR = 0xFFFF;
    PEOUT = 0;
    PEDIR = 0xFFFF;
    PJOUT = 0;
    PJDIR = 0xFF;
    P6SEL0 = 0x78;
    P6SEL1 = 0x78;
    LCDCPCTL0 = 0x1FE0;
    LCDCCTL0 = LCDSSEL | LCDPRE__16 | LCD4MUX | LCDLP;
    LCDCCTL0 |= LCDON;
    PM5CTL0 &= ~LOCKLPM5;
    P1IE = BIT0;

    for (;;)
        __bis_SR_register(LPM3_bits | GIE); // clean: floating-pin P4.4 P4.7 P5.7 P6.3
}

__attribute__((interrupt(PORT1_VECTOR))) void on_pin(void)
{
    P1IFG = 0;
}
