// device: samd21g18a
// Without its own bit a generator stops in standby: the output costs awake time only.
#include "samd21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    PORT->Group[0].PMUX[10].reg = PORT_PMUX_PMUXE(7);
    PORT->Group[0].PINCFG[20].reg = PORT_PINCFG_PMUXEN;
    GCLK->GENCTRL.reg = GCLK_GENCTRL_ID(4) | GCLK_GENCTRL_SRC_OSC8M | GCLK_GENCTRL_GENEN | GCLK_GENCTRL_OE; // finding: clock-output-on GCLK_IO4 PA20 note
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
