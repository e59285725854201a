// device: saml21j18b
// On demand an amplifier wakes with the converter that asks for it.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    OPAMP->OPAMPCTRL[0].reg = OPAMP_OPAMPCTRL_ENABLE | OPAMP_OPAMPCTRL_RUNSTDBY | OPAMP_OPAMPCTRL_ONDEMAND;
    OPAMP->CTRLA.reg = OPAMP_CTRLA_ENABLE; // clean: peripheral-on-in-sleep OPAMP
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI();
}
