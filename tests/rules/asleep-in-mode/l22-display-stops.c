// device: saml22j18a
// A display without run-in-standby goes dark where the program waits.
#include "saml22.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_PER7; }

int main(void)
{
    OSC32KCTRL->SLCDCTRL.reg = 0;
    SLCD->CTRLA.reg = SLCD_CTRLA_DUTY(3);
    SLCD->CTRLA.reg |= SLCD_CTRLA_ENABLE; // finding: asleep-in-mode SLCD proven
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_PER7;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI();
}
