// device: samd21g18a
// In standby an edge is seen with a clock only; a level is seen without.
#include "samd21.h"

void EIC_Handler(void) { EIC->INTFLAG.reg = 1ul << 9; }

int main(void)
{
    PORT->Group[0].PINCFG[9].reg = PORT_PINCFG_PMUXEN | PORT_PINCFG_PULLEN;
    EIC->CONFIG[1].reg = 2ul << 4;
    EIC->WAKEUP.reg = 1ul << 9;
    EIC->INTENSET.reg = 1ul << 9;
    EIC->CTRL.reg = EIC_CTRL_ENABLE; // finding: asleep-in-mode EIC proven
    NVIC_EnableIRQ(EIC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
