// device: saml21j18b
// The main regulator is told to stay in standby.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    SUPC->VREG.reg = SUPC_VREG_ENABLE | SUPC_VREG_RUNSTDBY | SUPC_VREG_LPEFF;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI(); // finding: full-power-regulator VREG proven warning
}
