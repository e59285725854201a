// device: saml21j18b
// Power domains that are told to stay on do not go into retention.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    SUPC->VREG.bit.LPEFF = 1;
    PM->STDBYCFG.reg = PM_STDBYCFG_PDCFG(3);
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI(); // finding: full-power-regulator PDCFG proven warning
}
