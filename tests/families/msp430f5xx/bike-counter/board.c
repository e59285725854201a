#include "board.h"

/* Every pin is driven low but those that the board wires: ports come in pairs, as words. */
static void park(void)
{
    PAOUT = 0;
    PADIR = 0xFFFF & ~TUBE;
    PBOUT = 0;
    PBDIR = 0xFFFF;
    PCOUT = 0;
    PCDIR = 0xFFFF;
    PDOUT = 0;
    PDDIR = 0xFFFF;
    PJOUT = 0;
    PJDIR = 0xFFFF;
}

/* The supervisors wake slowly but cheaply; the monitors are not needed with lithium cells, whose voltage drops at the very end only. */
static void supervise(void)
{
    PMMCTL0_H = PMMPW_H;
    SVSMHCTL = SVSHE | SVSHRVL_0 | SVSMHRRL_0;
    SVSMLCTL = 0;
    PMMIFG &= ~(SVSMHDLYIFG | SVSMLDLYIFG);
    PMMCTL0_H = 0;
}

static void start_crystal(void)
{
    P5SEL |= CRYSTAL;
    UCSCTL6 = (UCSCTL6 & ~(XT1OFF | XCAP_3 | XT1DRIVE_3)) | XCAP_3;
    do {
        UCSCTL7 &= ~(XT2OFFG | XT1LFOFFG | DCOFFG);
        SFRIFG1 &= ~OFIFG;
    } while (SFRIFG1 & OFIFG);
}

void board_init(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    park();
    supervise();
    start_crystal();
}
