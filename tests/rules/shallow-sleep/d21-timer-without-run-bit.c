// device: samd21g18a
// A timer without its run-in-standby bit, or one whose source stops, needs idle.
#include "samd21.h"

void TC3_Handler(void) { TC3->COUNT16.INTFLAG.reg = TC_COUNT16_INTFLAG_OVF; }

int main(void)
{
    PM->APBCMASK.reg = PM_APBCMASK_TC3;
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_TCC2_TC3 | GCLK_CLKCTRL_GEN(0) | GCLK_CLKCTRL_CLKEN;
    TC3->COUNT16.INTENSET.reg = TC_COUNT16_INTENSET_OVF;
    TC3->COUNT16.CTRLA.reg = TC_COUNT16_CTRLA_ENABLE | TC_COUNT16_CTRLA_RUNSTDBY;
    NVIC_EnableIRQ(TC3_IRQn);
    PM->SLEEP.reg = 2; // clean: shallow-sleep idle-2
    for (;;)
        __WFI();
}
