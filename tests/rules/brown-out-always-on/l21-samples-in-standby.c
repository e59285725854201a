// device: saml21j18b
// In standby the detector may sample.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    SUPC->BOD33.reg |= SUPC_BOD33_RUNSTDBY | SUPC_BOD33_STDBYCFG;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI(); // clean: brown-out-always-on BOD33
}
