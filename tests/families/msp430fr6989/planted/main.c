// device: msp430fr6989
// flags: -Wall
// A timer for a kitchen: one key starts it, and the display shows the minutes left.
#include <msp430fr6989.h>
#include <stdint.h>

#include "display.h"

#define KEY BIT3
#define CRYSTAL (BIT4 | BIT5)

static volatile uint8_t minutes;

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
    PDDIR = 0xFFFF;
    PEOUT = 0;
    PEDIR = 0xFBFF; // finding: floating-pin P10.2 proven warning
    PJOUT = 0;
    PJDIR = 0xFF;
    PJSEL0 |= CRYSTAL;
    PM5CTL0 &= ~LOCKLPM5;
}

static void start_clock(void)
{
    CSCTL2 = SELA__LFXTCLK | SELS__DCOCLK | SELM__DCOCLK; // finding: locked-write CSCTL2 proven warning
    RTCCTL0_H = RTCKEY_H;
    RTCCTL13 = RTCMODE;
    RTCCTL0_L = RTCTEVIE;
    RTCCTL0_H = 0;
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    set_pins();
    start_clock();
    display_init();
    P1IES = KEY;
    P1IFG = 0;
    P1IE = KEY;

    for (;;) {
        __bis_SR_register(LPM0_bits | GIE); // finding: shallow-sleep proven warning {{lpm3}}
        display_show(minutes);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG &= (uint8_t)~KEY;
    minutes = 10;
    __bic_SR_register_on_exit(LPM0_bits);
}

__attribute__((interrupt(RTC_VECTOR))) void on_minute(void)
{
    if (RTCIV != RTCIV__RTCTEVIFG)
        return;
    if (minutes != 0)
        minutes--;
    __bic_SR_register_on_exit(LPM0_bits);
}
