// device: msp430fr5969
// flags: -Wall
// A water meter's pulse counter that sends its count on a radio every hour.
#include <stdint.h>

#include "meter.h"

#define RADIO_SUPPLY BIT2

static volatile uint8_t minutes;

static void park_pins(void)
{
    PAOUT = REED;
    PAREN = REED;
    PADIR = (uint16_t)~REED;
    PBOUT = 0;
    PBDIR = (uint16_t)~BIT7; // finding: floating-pin P3.7 proven warning
    PJOUT = 0;
    PJDIR = 0xFF;
    PM5CTL0 &= ~LOCKLPM5;
}

static void start_clock(void)
{
    PJSEL0 |= BIT4;
    CSCTL4 &= ~LFXTOFF; // finding: locked-write CSCTL4 proven warning
    RTCCTL01 = RTCBCD | RTCHOLD | RTCTEV__MIN | RTCTEVIE;
    RTCCTL01 &= ~RTCHOLD;
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    park_pins();
    start_clock();
    meter_init();

    for (;;) {
        __bis_SR_register(LPM0_bits | GIE); // finding: shallow-sleep proven warning {{lpm3}}
        if (minutes >= 60) {
            minutes = 0;
            P4OUT |= RADIO_SUPPLY;
            meter_send();
            P4OUT &= ~RADIO_SUPPLY;
        }
    }
}

__attribute__((interrupt(RTC_VECTOR))) void on_minute(void)
{
    if (RTCIV == RTCIV_RTCTEVIFG)
        minutes++;
    __bic_SR_register_on_exit(LPM0_bits);
}
