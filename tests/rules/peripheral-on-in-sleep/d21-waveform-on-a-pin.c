// device: samd21g18a
// A timer in standby that drives a pin is in use, one that drives none is not.
#include "samd21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    PM->APBCMASK.reg |= PM_APBCMASK_TC3 | PM_APBCMASK_TC4;
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_TCC2_TC3 | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_TC4_TC5 | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    PORT->Group[0].PMUX[7].reg = PORT_PMUX_PMUXE(4);
    PORT->Group[0].PINCFG[14].reg = PORT_PINCFG_PMUXEN;
    TC3->COUNT16.CTRLA.reg = TC_COUNT16_CTRLA_ENABLE | TC_COUNT16_CTRLA_RUNSTDBY; // clean: peripheral-on-in-sleep TC3
    TC4->COUNT16.CTRLA.reg = TC_COUNT16_CTRLA_ENABLE | TC_COUNT16_CTRLA_RUNSTDBY; // finding: peripheral-on-in-sleep TC4 proven
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
