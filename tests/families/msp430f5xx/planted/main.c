// device: msp430f5529
// flags: -Wall
// Logs the temperature of a freezer, and how often somebody has plugged in a cable to look at the log. The battery lasts a third of what was promised.
#include <msp430.h>

#include "power.h"
#include "probe.h"
#include "usb.h"

static void park_pins(void)
{
    PAOUT = 0;
    PADIR = 0xFFFF;
    PBOUT = 0;
    PBDIR = 0xFFFF & ~BIT5; // finding: floating-pin P3.5 proven warning
    PCOUT = 0;
    PCDIR = 0xFFFF;
    PDOUT = 0;
    PDDIR = 0xFFFF;
    PJOUT = 0;
    PJDIR = 0xFFFF;
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    park_pins();
    power_init();
    probe_init();
    usb_init();
    RTCCTL01 = RTCMODE | RTCTEV__MIN | RTCTEVIE;

    for (;;) {
        __bis_SR_register(LPM0_bits | GIE); // finding: shallow-sleep proven warning {{lpm3}}
        probe_log();
    }
}

#pragma vector = RTC_VECTOR
__interrupt void on_minute(void)
{
    (void)RTCIV;
    __bic_SR_register_on_exit(LPM3_bits);
}
