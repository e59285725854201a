#include "power.h"

#include "saml22.h"

#define MODE_STANDBY 4u
#define BUTTON 2u /* PB02 to ground; read, not waited for */

// The board has the coil, and its lithium cell stays above 2.5 V. All pads but the button and the display's stay cut, as reset has them.
void power_init(void)
{
    MCLK->APBAMASK.reg &= ~(MCLK_APBAMASK_WDT | MCLK_APBAMASK_EIC);
    MCLK->AHBMASK.reg &= ~(MCLK_AHBMASK_USB | MCLK_AHBMASK_DMAC);
    MCLK->APBBMASK.reg &= ~MCLK_APBBMASK_USB;
    MCLK->APBCMASK.reg = MCLK_APBCMASK_SLCD;
    SUPC->VREG.bit.SEL = 1;
    SUPC->VREG.bit.LPEFF = 1;
    PORT->Group[1].OUTSET.reg = 1ul << BUTTON;
    PORT->Group[1].PINCFG[BUTTON].reg = PORT_PINCFG_INEN | PORT_PINCFG_PULLEN;
    PM->SLEEPCFG.bit.SLEEPMODE = MODE_STANDBY;
    while (PM->SLEEPCFG.bit.SLEEPMODE != MODE_STANDBY)
        ;
}
