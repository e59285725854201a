// device: msp430fr2433
// flags: -Wall
// A remote control for a blind: four keys, and a lamp that tells that a command went out.
#include <msp430fr2433.h>
#include <stdint.h>

#include "radio.h"

#define KEYS (BIT4 | BIT5 | BIT6 | BIT7)
#define LAMP BIT0

static volatile uint8_t pressed;

static void park_pins(void)
{
    P1OUT = 0;
    P1DIR = 0xFF;
    P2OUT = KEYS;
    P2REN = KEYS;
    P2DIR = (uint8_t)~KEYS;
    P3OUT = 0;
    P3DIR = BIT0 | BIT1; // finding: floating-pin P3.2 proven warning
    PM5CTL0 &= ~LOCKLPM5;
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    park_pins();
    PMMCTL0_L &= (uint8_t)~SVSHE; // finding: locked-write PMMCTL0 proven warning
    radio_init();
    P2IES = KEYS;
    P2IFG = 0;
    P2IE = KEYS;

    for (;;) {
        __bis_SR_register(LPM4_bits | GIE); // finding: brown-out-always-on SVSH proven note
        P1OUT |= LAMP;
        radio_send(pressed);
        P1OUT &= (uint8_t)~LAMP;
    }
}

__attribute__((interrupt(PORT2_VECTOR))) void on_key(void) // this one clears what it has seen
{
    pressed = P2IFG & KEYS;
    P2IFG &= (uint8_t)~KEYS;
    __bic_SR_register_on_exit(LPM4_bits);
}
