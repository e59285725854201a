// device: saml21j18b
// flags: -D__SAML21J18B__
// The clock's match comes once a second and is counted to sixty: its register has 32 bits for that.
#include "saml21.h"

static volatile uint32_t seconds;

void RTC_Handler(void)
{
    RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0;
    seconds++;
}

int main(void)
{
    OSC32KCTRL->RTCCTRL.reg = OSC32KCTRL_RTCCTRL_RTCSEL(4);
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_MATCHCLR | RTC_MODE0_CTRLA_PRESCALER(1);
    RTC->MODE0.COMP.reg = 1023; // finding: woken-too-often RTC
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    NVIC_EnableIRQ(RTC_IRQn);
    RTC->MODE0.CTRLA.reg |= RTC_MODE0_CTRLA_ENABLE;
    PM->SLEEPCFG.reg = 4;
    for (;;) {
        while (seconds < 60)
            __WFI();
        seconds = 0;
        PORT->Group[0].OUTTGL.reg = 1u << 5;
    }
}
