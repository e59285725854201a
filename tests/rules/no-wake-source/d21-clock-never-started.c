// device: samd21g18a
// The clock's interrupt is let through, but nobody starts the clock.
#include "samd21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(2) | GCLK_CLKCTRL_CLKEN;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI(); // finding: no-wake-source SLEEP
}
