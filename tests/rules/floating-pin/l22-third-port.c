// device: saml22n18a
// The widest package brings out a third port.
#include "saml22.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_PER7; }

int main(void)
{
    PORT->Group[2].PINCFG[5].reg = PORT_PINCFG_INEN; // finding: floating-pin PC05 proven
    PORT->Group[2].PINCFG[6].reg = PORT_PINCFG_INEN | PORT_PINCFG_PULLEN; // clean: floating-pin PC06
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_PER7;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI();
}
