// device: saml21j18b
// The clock's interrupt is let through, but nobody starts the clock.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI(); // finding: no-wake-source SLEEP
}
