// device: saml21j18b
// The input buffer that the program switches on floats without a pull, whichever way the pull goes.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    PORT->Group[0].PINCFG[3].reg = PORT_PINCFG_INEN; // finding: floating-pin PA03 proven
    PORT->Group[0].PINCFG[4].reg = PORT_PINCFG_INEN | PORT_PINCFG_PULLEN; // clean: floating-pin PA04
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI();
}
