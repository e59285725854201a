#include "board.h"

#include "saml21.h"

#define MODE_IDLE 2u
#define MODE_STANDBY 4u
#define REGULATOR_BUCK 1u

// Reset leaves every input buffer cut; only the heater's pin drives.
void board_park(void)
{
    PORT->Group[1].OUTCLR.reg = 1ul << HEATER;
    PORT->Group[1].DIRSET.reg = 1ul << HEATER;
}

// The coil is there, and the lithium cell never falls below 2.5 V. Only what is used gets its bus clock.
void board_power(void)
{
    MCLK->APBAMASK.reg &= ~(MCLK_APBAMASK_WDT | MCLK_APBAMASK_EIC);
    MCLK->AHBMASK.reg &= ~(MCLK_AHBMASK_USB | MCLK_AHBMASK_DMAC);
    MCLK->APBBMASK.reg &= ~MCLK_APBBMASK_USB;
    MCLK->APBCMASK.reg = 0;
    MCLK->APBDMASK.reg = 0;
    SUPC->VREG.bit.SEL = REGULATOR_BUCK;
    while (!SUPC->STATUS.bit.VREGRDY)
        ;
    SUPC->VREG.bit.LPEFF = 1;
    board_stand_by();
}

void board_idle(void)
{
    PM->SLEEPCFG.bit.SLEEPMODE = MODE_IDLE;
    while (PM->SLEEPCFG.bit.SLEEPMODE != MODE_IDLE)
        ;
}

void board_stand_by(void)
{
    PM->SLEEPCFG.bit.SLEEPMODE = MODE_STANDBY;
    while (PM->SLEEPCFG.bit.SLEEPMODE != MODE_STANDBY)
        ;
}

void heater_set(int is_on)
{
    if (is_on)
        PORT->Group[1].OUTSET.reg = 1ul << HEATER;
    else
        PORT->Group[1].OUTCLR.reg = 1ul << HEATER;
}
