// device: saml21j18b
// Reset selects idle; the clock goes on in standby, too.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0; // finding: shallow-sleep proven {{idle}}
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
