// device: msp430fr5994
// flags: -Wall
// A scale for parcels: one key weighs, and the weight goes out on a serial line.
#include <msp430fr5994.h>
#include <stdint.h>

#include "scale.h"

#define KEY BIT6

static void set_pins(void)
{
    PAOUT = KEY;
    PADIR = (unsigned int)~KEY;
    PAREN = KEY;
    PBOUT = 0;
    PBDIR = 0xFFFF;
    PCOUT = 0;
    PCDIR = 0xFFFF;
    PDOUT = 0;
    PDDIR = 0xFFDF;
    PJOUT = 0;
    PJDIR = 0x3F; // finding: floating-pin PJ.6 PJ.7 proven warning
    PM5CTL0 &= ~LOCKLPM5;
}

static void keep_time(void)
{
    RTCCTL0_H = 0;
    RTCCTL13 = RTCMODE | RTCHOLD; // finding: locked-write RTCCTL13 proven warning
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    set_pins();
    keep_time();
    scale_init();
    P1IES = KEY;
    P1IFG = 0;
    P1IE = KEY;

    for (;;) {
        __bis_SR_register(LPM0_bits | GIE); // finding: shallow-sleep proven warning {{lpm4}}
        scale_weigh();
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG &= (uint8_t)~KEY;
    __bic_SR_register_on_exit(LPM0_bits);
}
