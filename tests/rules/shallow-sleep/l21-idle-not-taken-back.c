// device: saml21j18b
// Idle is for the bell's timer, and stays when it is over. From the second pass on the mode depends on the path.
#include "saml21.h"

void EIC_Handler(void) { EIC->INTFLAG.reg = 1ul << 9; }

int main(void)
{
    PORT->Group[0].PINCFG[9].reg = PORT_PINCFG_PMUXEN | PORT_PINCFG_PULLEN;
    EIC->CONFIG[1].reg = 2ul << 4;
    EIC->ASYNCH.reg = 1ul << 9;
    EIC->INTENSET.reg = 1ul << 9;
    EIC->CTRLA.reg = EIC_CTRLA_ENABLE;
    NVIC_EnableIRQ(EIC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;) {
        __WFI();
        if (PORT->Group[0].IN.reg & (1ul << 9))
            PM->SLEEPCFG.reg = 2; // finding: shallow-sleep possible note {{standby}}
    }
}
