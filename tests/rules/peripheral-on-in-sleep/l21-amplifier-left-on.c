// device: saml21j18b
// An amplifier that runs in standby without being asked draws there; one on demand does not.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    OPAMP->OPAMPCTRL[0].reg = OPAMP_OPAMPCTRL_ENABLE | OPAMP_OPAMPCTRL_RUNSTDBY;
    OPAMP->CTRLA.reg = OPAMP_CTRLA_ENABLE; // finding: peripheral-on-in-sleep OPAMP proven
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI();
}
