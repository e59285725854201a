// device: samd21g18a
// While its bit of the access controller is set, a peripheral's settings are locked.
#include "samd21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    PM->APBCMASK.reg |= PM_APBCMASK_TC3;
    PAC2->WPSET.reg = 1ul << 11;
    TC3->COUNT16.CTRLA.reg = TC_COUNT16_CTRLA_PRESCALER(7); // finding: locked-write TC3.CTRLA
    PAC2->WPCLR.reg = 1ul << 11;
    TC3->COUNT16.CTRLA.reg = TC_COUNT16_CTRLA_PRESCALER(6);
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
