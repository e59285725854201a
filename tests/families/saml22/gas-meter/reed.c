#include "reed.h"

#include "saml22.h"

#define REED 3u /* PA03 to ground, on EXTINT3 */

static volatile uint32_t turns;

void EIC_Handler(void)
{
    EIC->INTFLAG.reg = 1ul << REED;
    turns++;
}

// The filter that keeps the contact's chatter out runs from the ultra low-power oscillator.
void reed_init(void)
{
    PORT->Group[0].OUTSET.reg = 1ul << REED;
    PORT->Group[0].PMUX[REED / 2].bit.PMUXO = 0;
    PORT->Group[0].PINCFG[REED].reg = PORT_PINCFG_PMUXEN | PORT_PINCFG_INEN | PORT_PINCFG_PULLEN;
    EIC->CTRLA.reg = EIC_CTRLA_CKSEL;
    EIC->CONFIG[0].bit.SENSE3 = 2;
    EIC->CONFIG[0].bit.FILTEN3 = 1;
    EIC->INTENSET.reg = 1ul << REED;
    EIC->CTRLA.reg |= EIC_CTRLA_ENABLE;
    while (EIC->SYNCBUSY.reg)
        ;
    NVIC_EnableIRQ(EIC_IRQn);
}

uint32_t reed_turns(void)
{
    return turns;
}
