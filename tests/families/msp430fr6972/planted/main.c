// device: msp430fr6972
// flags: -Wall
// A tag on a shelf: a reader sends the price on a serial line, and the display shows it.
#include <msp430fr6972.h>
#include <stdint.h>

#include "display.h"

static volatile uint8_t price;

static void set_pins(void)
{
    PAOUT = 0;
    PADIR = 0xFFFF;
    PBOUT = 0;
    PBDIR = 0xFFFF;
    PCOUT = 0;
    PCDIR = 0xFFFF;
    PDOUT = 0;
    PDDIR = 0xFFFF;
    PEOUT = 0;
    PEDIR = 0x007F; // finding: floating-pin P9.7 proven warning
    PJOUT = 0;
    PJDIR = 0xFF;
    P7SEL0 |= BIT4;
    P7SEL1 |= BIT4; // finding: clock-output-on P7.4 SMCLK proven warning
    P2SEL0 |= BIT0 | BIT1;
    P2REN |= BIT1;
    P2OUT |= BIT1;
    PM5CTL0 &= ~LOCKLPM5;
}

static void start_line(void)
{
    UCA0CTLW0 = UCSWRST | UCSSEL__SMCLK;
    UCA0BRW = 6;
    UCA0CTLW0 &= ~UCSWRST;
    UCA0IE = 0x0001;
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    set_pins();
    RTCCTL13 = RTCHOLD; // finding: locked-write RTCCTL13 proven warning
    start_line();
    display_init();

    for (;;) {
        __bis_SR_register(LPM0_bits | GIE); // finding: shallow-sleep proven warning {{lpm1}}
        display_show(price);
        UCA0TXBUF = price;
        while (!(UCA0IFG & UCTXIFG)) // finding: polling-wait UCA0IFG proven warning
            ;
    }
}

__attribute__((interrupt(USCI_A0_VECTOR))) void on_byte(void)
{
    price = (uint8_t)UCA0RXBUF;
    __bic_SR_register_on_exit(LPM0_bits);
}
