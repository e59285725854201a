// device: saml21j18b
// In backup only the clock, the wake-up pins and the return of the supply count: an interrupt line does not.
#include "saml21.h"

void EIC_Handler(void) { EIC->INTFLAG.reg = 1ul << 9; }

int main(void)
{
    EIC->ASYNCH.reg = 1ul << 9;
    EIC->INTENSET.reg = 1ul << 9;
    EIC->CTRLA.reg = EIC_CTRLA_ENABLE;
    NVIC_EnableIRQ(EIC_IRQn);
    PM->SLEEPCFG.reg = 5;
    for (;;)
        __WFI(); // finding: no-wake-source SLEEP
}
