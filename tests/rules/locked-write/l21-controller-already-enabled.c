// device: saml21j18b
// An enabled interrupt controller keeps what its lines listen for.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    EIC->CONFIG[0].reg = 2ul;
    EIC->CTRLA.reg = EIC_CTRLA_ENABLE;
    EIC->CONFIG[1].reg = 2ul << 4; // finding: locked-write EIC.CONFIG[1]
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI();
}
