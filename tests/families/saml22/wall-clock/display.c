#include "display.h"

#include "saml22.h"

#define FUNCTION_DISPLAY 1u
#define FIRST_LINE 4u
#define LAST_LINE 11u
#define CRYSTAL 1u

static volatile uint32_t digits;

// Eight of the display's lines are on PA04 to PA11. It goes on in standby, from the crystal.
void display_start(void)
{
    for (uint32_t line = FIRST_LINE; line <= LAST_LINE; line++) {
        if (line & 1)
            PORT->Group[0].PMUX[line / 2].bit.PMUXO = FUNCTION_DISPLAY;
        else
            PORT->Group[0].PMUX[line / 2].bit.PMUXE = FUNCTION_DISPLAY;
        PORT->Group[0].PINCFG[line].reg = PORT_PINCFG_PMUXEN;
    }
    OSC32KCTRL->SLCDCTRL.reg = CRYSTAL;
    SLCD->CTRLA.reg = SLCD_CTRLA_SWRST;
    while (SLCD->SYNCBUSY.reg)
        ;
    SLCD->CTRLA.reg = SLCD_CTRLA_DUTY(3) | SLCD_CTRLA_RUNSTDBY;
    SLCD->CTRLA.reg |= SLCD_CTRLA_ENABLE;
}

void display_show(uint32_t seconds)
{
    digits = seconds % 60;
}
