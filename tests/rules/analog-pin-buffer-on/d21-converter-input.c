// device: samd21g18a
// A pin in its analog function keeps the digital input buffer that the program switches on.
#include "samd21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    PORT->Group[0].PMUX[2].reg = PORT_PMUX_PMUXE(1) | PORT_PMUX_PMUXO(1); // finding: analog-pin-buffer-on PA04
    PORT->Group[0].PINCFG[4].reg = PORT_PINCFG_PMUXEN | PORT_PINCFG_INEN;
    PORT->Group[0].PINCFG[5].reg = PORT_PINCFG_PMUXEN; // clean: analog-pin-buffer-on PA05
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
