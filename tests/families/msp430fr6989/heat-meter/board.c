#include "board.h"

/* The die has ports that this package does not bring out; their pads want a level like the others. */
static void set_pins(void)
{
    PAOUT = 0;
    PADIR = (unsigned int)~FLOW;
    PBOUT = 0;
    PBDIR = 0xFFFF;
    PCOUT = 0;
    PCDIR = 0xFFFF;
    PDOUT = 0;
    PDDIR = 0xFFFF;
    PEOUT = 0;
    PEDIR = (unsigned int)~(WHEEL | RETURN);
    PJOUT = 0;
    PJDIR = 0xFF;
    P1SEL0 |= FLOW;
    P1SEL1 |= FLOW;
    P9SEL0 |= WHEEL | RETURN;
    P9SEL1 |= WHEEL | RETURN;
    PJSEL0 |= CRYSTAL;
}

void board_init(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    set_pins();
    PM5CTL0 &= ~LOCKLPM5;
    CSCTL0_H = CSKEY_H;
    CSCTL2 = SELA__LFXTCLK | SELS__DCOCLK | SELM__DCOCLK;
    CSCTL4 &= ~LFXTOFF;
    CSCTL0_H = 0;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L &= ~SVSHE;
    PMMCTL0_H = 0;
}

void board_sleep(void)
{
    __bis_SR_register(LPM3_bits | GIE);
}
