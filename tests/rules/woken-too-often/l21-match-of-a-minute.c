// device: saml21j18b
// flags: -D__SAML21J18B__
// The match comes when there is something to do, once a minute.
#include "saml21.h"

void RTC_Handler(void)
{
    RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0;
}

int main(void)
{
    OSC32KCTRL->RTCCTRL.reg = OSC32KCTRL_RTCCTRL_RTCSEL(4);
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_MATCHCLR | RTC_MODE0_CTRLA_PRESCALER(1);
    RTC->MODE0.COMP.reg = 61439;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    NVIC_EnableIRQ(RTC_IRQn);
    RTC->MODE0.CTRLA.reg |= RTC_MODE0_CTRLA_ENABLE;
    PM->SLEEPCFG.reg = 4;
    for (;;) {
        __WFI(); // clean: woken-too-often RTC
        PORT->Group[0].OUTTGL.reg = 1u << 5;
    }
}
