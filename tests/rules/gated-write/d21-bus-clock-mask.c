// device: samd21g18a
// A peripheral without its bus clock takes no writes.
#include "samd21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    TC3->COUNT16.CTRLA.reg = TC_COUNT16_CTRLA_PRESCALER(7); // finding: gated-write TC3.CTRLA TC3.INTENSET proven warning
    TC3->COUNT16.INTENSET.reg = TC_COUNT16_INTENSET_OVF;
    PM->APBCMASK.reg |= PM_APBCMASK_TC4;
    TC4->COUNT16.CTRLA.reg = TC_COUNT16_CTRLA_PRESCALER(7);
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
