// device: samd21g18a
// The converter's bus clock is open from reset on.
#include "samd21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    uint32_t mask = PM_APBAMASK_EIC | PM_APBAMASK_WDT; // finding: peripheral-clock-left-on ADC proven note

    PM->APBAMASK.reg &= ~mask;
    PM->AHBMASK.reg &= ~(PM_AHBMASK_USB | PM_AHBMASK_DMAC);
    PM->APBBMASK.reg &= ~(PM_APBBMASK_USB | PM_APBBMASK_DMAC);
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
