// device: samd21g18a
// A fast oscillator that runs on in standby needs the full setting.
#include "samd21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    SYSCTRL->VREG.bit.RUNSTDBY = 1;
    SYSCTRL->OSC8M.bit.RUNSTDBY = 1;
    SYSCTRL->OSC8M.bit.ONDEMAND = 0;
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI(); // clean: full-power-regulator VREG
}
