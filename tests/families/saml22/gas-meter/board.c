#include "board.h"

#include "saml22.h"

#define MODE_IDLE 2u
#define MODE_STANDBY 4u
#define LOWER_HALF 0xFFFFu

// Pads without a use get their pull-down, all of a half at once; the contact and the line are set up where they belong.
void board_init(void)
{
    for (uint32_t port = 0; port < 3; port++) {
        PORT->Group[port].WRCONFIG.reg = PORT_WRCONFIG_WRPINCFG | PORT_WRCONFIG_PULLEN | PORT_WRCONFIG_PINMASK(LOWER_HALF);
        PORT->Group[port].WRCONFIG.reg = PORT_WRCONFIG_HWSEL | PORT_WRCONFIG_WRPINCFG | PORT_WRCONFIG_PULLEN | PORT_WRCONFIG_PINMASK(LOWER_HALF);
    }
    MCLK->APBAMASK.reg &= ~(MCLK_APBAMASK_WDT | MCLK_APBAMASK_RTC);
    MCLK->AHBMASK.reg &= ~(MCLK_AHBMASK_USB | MCLK_AHBMASK_DMAC);
    MCLK->APBBMASK.reg &= ~MCLK_APBBMASK_USB;
    MCLK->APBCMASK.reg = 0;
    SUPC->VREG.reg = SUPC_VREG_ENABLE | SUPC_VREG_SEL(1) | SUPC_VREG_LPEFF;
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
