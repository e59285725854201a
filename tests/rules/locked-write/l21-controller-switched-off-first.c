// device: saml21j18b
// Switched off, or put back to its reset state, the controller takes new settings.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    EIC->CTRLA.reg = EIC_CTRLA_ENABLE;
    EIC->CTRLA.reg = 0;
    EIC->CONFIG[1].reg = 2ul << 4;
    EIC->CTRLA.reg = EIC_CTRLA_ENABLE;
    EIC->CTRLA.reg |= EIC_CTRLA_SWRST;
    EIC->CONFIG[0].reg = 2ul;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI();
}
