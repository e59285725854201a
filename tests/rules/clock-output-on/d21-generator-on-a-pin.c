// device: samd21g18a
// A generator drives its pin in standby if its own bit says so, and what feeds it goes on.
#include "samd21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    PORT->Group[0].PMUX[10].reg = PORT_PMUX_PMUXE(7) | PORT_PMUX_PMUXO(7);
    PORT->Group[0].PINCFG[20].reg = PORT_PINCFG_PMUXEN;
    GCLK->GENCTRL.reg = GCLK_GENCTRL_ID(4) | GCLK_GENCTRL_SRC_OSCULP32K | GCLK_GENCTRL_GENEN | GCLK_GENCTRL_OE | GCLK_GENCTRL_RUNSTDBY; // finding: clock-output-on GCLK_IO4 PA20 proven warning
    GCLK->GENCTRL.reg = GCLK_GENCTRL_ID(5) | GCLK_GENCTRL_SRC_OSCULP32K | GCLK_GENCTRL_GENEN; // clean: clock-output-on GCLK_IO5
    PORT->Group[0].PINCFG[21].reg = PORT_PINCFG_PMUXEN;
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
