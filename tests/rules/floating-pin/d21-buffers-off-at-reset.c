// device: samd21g18a
// Out of reset the input buffers are cut: an open pad cannot float. With the buffer on it can, unless a pull or the port holds it.
#include "samd21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    PORT->Group[0].PINCFG[3].bit.INEN = 1; // finding: floating-pin PA03 proven
    PORT->Group[0].PINCFG[4].reg = PORT_PINCFG_INEN | PORT_PINCFG_PULLEN; // clean: floating-pin PA04
    PORT->Group[0].OUTSET.reg = 1ul << 4;
    PORT->Group[0].PINCFG[5].reg = PORT_PINCFG_INEN | PORT_PINCFG_PULLEN; // clean: floating-pin PA05
    PORT->Group[0].PINCFG[6].reg = PORT_PINCFG_INEN; // clean: floating-pin PA06
    PORT->Group[0].DIRSET.reg = 1ul << 6;
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
