#include "board.h"

#include <stdint.h>

static void start_crystal(void)
{
    PJSEL0 |= CRYSTAL;
    CSCTL0_H = CSKEY >> 8;
    CSCTL1 = DCOFSEL_0;
    CSCTL2 = SELA__LFXTCLK | SELS__DCOCLK | SELM__DCOCLK;
    CSCTL3 = DIVA__1 | DIVS__1 | DIVM__1;
    CSCTL4 &= ~LFXTOFF;
    CSCTL0_H = 0;
}

/* Nothing guards the supply while it sleeps: the lithium cell does not dip. */
static void supervise_only_when_awake(void)
{
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L &= ~SVSHE_L;
    PMMCTL0_H = 0;
}

void board_init(void)
{
    WDTCTL = WDTPW | WDTHOLD;

    PAOUT = 0;
    PADIR = (uint16_t)~((uint16_t)DIVIDER | (uint16_t)(CABLE_IN << 8));
    PBOUT = 0;
    PBDIR = 0xFFFF;
    PJOUT = 0;
    PJDIR = 0xFF;
    P2OUT |= CABLE_IN;
    P2REN |= CABLE_IN;
    P1SEL1 |= DIVIDER;
    P1SEL0 |= DIVIDER;
    PM5CTL0 &= ~LOCKLPM5;

    start_crystal();
    supervise_only_when_awake();
}
