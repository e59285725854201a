// device: samd21g18a
// Without its on-demand bit an oscillator runs in standby whether or not anything asks for it.
#include "samd21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    SYSCTRL->OSC8M.bit.RUNSTDBY = 1;
    SYSCTRL->OSC8M.bit.ONDEMAND = 0; // finding: oscillator-kept-on OSC8M proven
    SYSCTRL->OSC32K.reg = SYSCTRL_OSC32K_ENABLE | SYSCTRL_OSC32K_EN32K | SYSCTRL_OSC32K_RUNSTDBY | SYSCTRL_OSC32K_ONDEMAND; // clean: oscillator-kept-on OSC32K
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
