// device: saml21j18b
// Reset leaves every bus clock open; what the program closes takes no writes.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    MCLK->APBCMASK.reg &= ~MCLK_APBCMASK_TC0;
    TC0->COUNT16.WAVE.reg = TC_WAVE_WAVEGEN(1); // finding: gated-write TC0.WAVE proven warning
    TC1->COUNT16.WAVE.reg = TC_WAVE_WAVEGEN(1);
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI();
}
