// device: saml21j18b
// The port on the processor's own bus is the same port.
#include "saml21.h"

void RTC_Handler(void) { RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0; }

int main(void)
{
    PORT_IOBUS->Group[0].PINCFG[3].reg = PORT_PINCFG_INEN; // finding: floating-pin PA03 proven
    PORT_IOBUS->Group[0].PINCFG[4].reg = PORT_PINCFG_INEN; // clean: floating-pin PA04
    PORT_IOBUS->Group[0].DIRSET.reg = 1ul << 4;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_ENABLE;
    NVIC_EnableIRQ(RTC_IRQn);
    PM->SLEEPCFG.reg = 4;
    for (;;)
        __WFI();
}
