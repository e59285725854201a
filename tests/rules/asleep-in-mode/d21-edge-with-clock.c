// device: samd21g18a
// The ultra low-power oscillator's clock is enough to see an edge.
#include "samd21.h"

void EIC_Handler(void) { EIC->INTFLAG.reg = 1ul << 9; }

int main(void)
{
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_EIC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    PORT->Group[0].PINCFG[9].reg = PORT_PINCFG_PMUXEN | PORT_PINCFG_PULLEN;
    EIC->CONFIG[1].reg = 2ul << 4;
    EIC->WAKEUP.reg = 1ul << 9;
    EIC->INTENSET.reg = 1ul << 9;
    EIC->CTRL.reg = EIC_CTRL_ENABLE; // clean: asleep-in-mode EIC
    NVIC_EnableIRQ(EIC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
