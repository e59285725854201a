#include "power.h"

#include "saml21.h"

#define MODE_STANDBY 4u
#define USED 0x00010200u

// Pads without a use drive low; the switch and the bell are set up where they belong. The supply is 3.3 V, out of a regulator.
void power_init(void)
{
    PORT->Group[0].OUTCLR.reg = ~USED;
    PORT->Group[0].DIRSET.reg = ~USED;
    PORT->Group[1].DIRSET.reg = 0xFFFFFFFFu;
    MCLK->APBAMASK.reg &= ~(MCLK_APBAMASK_WDT | MCLK_APBAMASK_RTC);
    MCLK->AHBMASK.reg &= ~(MCLK_AHBMASK_USB | MCLK_AHBMASK_DMAC);
    MCLK->APBBMASK.reg &= ~MCLK_APBBMASK_USB;
    MCLK->APBCMASK.reg = MCLK_APBCMASK_TC0;
    MCLK->APBDMASK.reg = 0;
    SUPC->VREG.bit.LPEFF = 1;
    PM->SLEEPCFG.bit.SLEEPMODE = MODE_STANDBY;
    while (PM->SLEEPCFG.bit.SLEEPMODE != MODE_STANDBY)
        ;
}
