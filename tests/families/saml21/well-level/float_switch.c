#include "float_switch.h"

#include "saml21.h"

#define SWITCH 9u /* PA09 to ground, on EXTINT9 */

static volatile unsigned char has_moved;

void EIC_Handler(void)
{
    EIC->INTFLAG.reg = 1ul << SWITCH;
    has_moved = 1;
}

// An edge that is looked for without a clock.
void float_switch_init(void)
{
    PORT->Group[0].OUTSET.reg = 1ul << SWITCH;
    PORT->Group[0].PMUX[SWITCH / 2].bit.PMUXO = 0;
    PORT->Group[0].PINCFG[SWITCH].reg = PORT_PINCFG_PMUXEN | PORT_PINCFG_INEN | PORT_PINCFG_PULLEN;
    EIC->CONFIG[SWITCH / 8].reg = 2ul << (4 * (SWITCH % 8));
    EIC->ASYNCH.reg = 1ul << SWITCH;
    EIC->INTENSET.reg = 1ul << SWITCH;
    EIC->CTRLA.reg = EIC_CTRLA_ENABLE;
    while (EIC->SYNCBUSY.reg)
        ;
    NVIC_EnableIRQ(EIC_IRQn);
}

int float_switch_has_moved(void)
{
    return has_moved;
}

int float_switch_take(void)
{
    int moved = has_moved;

    has_moved = 0;
    return moved;
}
