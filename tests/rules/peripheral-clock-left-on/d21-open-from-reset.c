// device: samd21g18a
// Reset leaves some bus clocks open; what the program opens itself is a plain waste.
#include "samd21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    PM->AHBMASK.reg &= ~(PM_AHBMASK_USB | PM_AHBMASK_DMAC); // clean: peripheral-clock-left-on DMAC
    PM->APBBMASK.reg &= ~(PM_APBBMASK_USB | PM_APBBMASK_DMAC);
    PM->APBAMASK.reg &= ~(PM_APBAMASK_EIC | PM_APBAMASK_WDT);
    PM->APBCMASK.reg = PM_APBCMASK_TC5; // finding: peripheral-clock-left-on TC5 proven warning
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
