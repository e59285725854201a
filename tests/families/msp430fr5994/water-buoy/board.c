#include "board.h"

static void set_pins(void)
{
    PAOUT = 0;
    PADIR = 0xFFFF;
    PBOUT = 0;
    PBDIR = 0xFFFF;
    PCOUT = 0;
    PCDIR = 0xFFFF;
    PDOUT = 0;
    PDDIR = (unsigned int)~DIVIDER;
    PJOUT = 0;
    PJDIR = 0xFF;
    P7SEL0 |= DIVIDER;
    P7SEL1 |= DIVIDER;
    P5SEL0 |= RADIO_OUT;
    PJSEL0 |= CRYSTAL;
}

/* The clock went on meanwhile if this is a wake-up; else it is started. */
static void start_clock(void)
{
    CSCTL0_H = CSKEY_H;
    CSCTL4 &= ~LFXTOFF;
    CSCTL0_H = 0;
    RTCCTL0_H = RTCKEY_H;
    if (!(PMMIFG & PMMLPM5IFG)) {
        RTCTIM0 = 0;
        RTCTIM1 = 0;
    }
    RTCCTL13 = RTCMODE | RTCBCD | RTCTEV_1;
    RTCCTL0_L = RTCTEVIE;
    RTCCTL0_H = 0;
}

void board_init(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    set_pins();
    start_clock();
    PM5CTL0 &= ~LOCKLPM5;
}

/* Does not come back: the clock's event is a reset. */
void board_off_for_an_hour(void)
{
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L = PMMREGOFF;
    PMMCTL0_H = 0;
    __bis_SR_register(LPM4_bits | GIE);
}
