// device: saml21j18b
// While the part idles the main regulator carries it: the switching one wastes less, if the board has the coil.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 2;
    for (;;)
        __WFI(); // finding: full-power-regulator BUCK board-dependent note {{an inductor at VSW}}
}
