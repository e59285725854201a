// device: saml21j18b
// The controller may take its clock from the ultra low-power oscillator.
#include "saml21.h"

void EIC_Handler(void) { EIC->INTFLAG.reg = 1ul << 9; }

int main(void)
{
    PORT->Group[0].PINCFG[9].reg = PORT_PINCFG_PMUXEN | PORT_PINCFG_PULLEN;
    EIC->CONFIG[1].reg = 2ul << 4;
    EIC->INTENSET.reg = 1ul << 9;
    EIC->CTRLA.reg = EIC_CTRLA_CKSEL;
    EIC->CTRLA.reg |= EIC_CTRLA_ENABLE; // clean: asleep-in-mode EIC
    NVIC_EnableIRQ(EIC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI();
}
