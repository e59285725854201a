// device: samd21g18a
// A pin on a line of the interrupt controller has its buffer on, whatever its own bit says; what another function takes is driven.
#include "samd21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    PORT->Group[0].PMUX[5].reg = PORT_PMUX_PMUXE(0) | PORT_PMUX_PMUXO(2);
    PORT->Group[0].PINCFG[10].reg = PORT_PINCFG_PMUXEN; // finding: floating-pin PA10 board-dependent
    PORT->Group[0].PINCFG[11].reg = PORT_PINCFG_PMUXEN | PORT_PINCFG_INEN; // clean: floating-pin PA11
    EIC->INTENSET.reg = 1ul << 10;
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
