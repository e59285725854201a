// device: saml21j18b
// The switching regulator, the efficient low-power one, and domains that follow what works in them.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    SUPC->VREG.bit.SEL = 1;
    SUPC->VREG.bit.LPEFF = 1;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI(); // clean: full-power-regulator LPEFF
}
