// device: saml22j18a
// The flag of the period that is let through is the one to clear.
#include "saml22.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_PER7; }

int main(void)
{
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_PER7;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI(); // clean: pending-wake
}
