#include "board.h"

#include <stdint.h>

/* The radio needs a core voltage of level 2: up there a step at a time. */
static void raise_core(uint8_t level)
{
    PMMCTL0_H = PMMPW_H;
    SVSMHCTL = SVSHE | SVSHRVL0 * level | SVMHE | SVSMHRRL0 * level;
    SVSMLCTL = SVSLE | SVMLE | SVSMLRRL0 * level;
    while (!(PMMIFG & SVSMLDLYIFG))
        ;
    PMMIFG &= ~(SVMLVLRIFG | SVMLIFG);
    PMMCTL0_L = PMMCOREV0 * level;
    if (PMMIFG & SVMLIFG)
        while (!(PMMIFG & SVMLVLRIFG))
            ;
    SVSMLCTL = SVSLE | SVSLRVL0 * level | SVMLE | SVSMLRRL0 * level;
    PMMCTL0_H = 0;
}

static void map_pins(void)
{
    __disable_interrupt();
    PMAPKEYID = PMAPKEY;
    P3MAP6 = PM_RFGDO0;
    PMAPKEYID = 0;
    __enable_interrupt();
    P3DIR |= BENCH;
    P3SEL |= BENCH;
}

void board_init(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = 0;
    P1DIR = (uint8_t)~TILT;
    P2OUT = 0;
    P2DIR = 0xFF;
    P3OUT = 0;
    P3DIR = 0xFF;
    P5OUT = 0;
    P5DIR = 0xFF;
    PJOUT = 0;
    PJDIR = 0x0F;
    raise_core(1);
    raise_core(2);
    map_pins();
    P5SEL |= CRYSTAL;
    UCSCTL6 &= ~(XT1OFF | XT1DRIVE_3);
}
