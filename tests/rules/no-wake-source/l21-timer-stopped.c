// device: saml21j18b
// The timer's interrupt stays let through while the timer itself is off.
#include "saml21.h"

void TC0_Handler(void) { TC0->COUNT16.INTFLAG.reg = TC_INTFLAG_OVF; }

int main(void)
{
    TC0->COUNT16.CTRLA.reg = TC_CTRLA_RUNSTDBY;
    TC0->COUNT16.INTENSET.reg = TC_INTENSET_OVF;
    NVIC_EnableIRQ(TC0_IRQn);
    PM->SLEEPCFG.reg = 2;
    for (;;)
        __WFI(); // finding: no-wake-source SLEEP
}
