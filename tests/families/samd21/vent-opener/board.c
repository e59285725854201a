#include "board.h"

#include "samd21.h"

#define LOWER_HALF 0x0000FFFFu
#define UPPER_HALF 0xFFFF0000u
#define NUMBER_OF_PORTS 2u

// All pads lie open with their input buffers cut, as reset leaves them; what is wired gets its level after that.
void board_park(void)
{
    for (uint32_t port = 0; port < NUMBER_OF_PORTS; port++) {
        PORT->Group[port].WRCONFIG.reg = PORT_WRCONFIG_WRPINCFG | PORT_WRCONFIG_WRPMUX | PORT_WRCONFIG_PINMASK(LOWER_HALF);
        PORT->Group[port].WRCONFIG.reg = PORT_WRCONFIG_HWSEL | PORT_WRCONFIG_WRPINCFG | PORT_WRCONFIG_WRPMUX | PORT_WRCONFIG_PINMASK(UPPER_HALF >> 16);
    }

    PORT->Group[0].OUTCLR.reg = 1ul << OPENER;
    PORT->Group[0].DIRSET.reg = 1ul << OPENER;
    PORT->Group[1].OUTCLR.reg = 1ul << LAMP;
    PORT->Group[1].DIRSET.reg = 1ul << LAMP;

    PORT->Group[0].OUTSET.reg = 1ul << BUTTON;
    PORT->Group[0].PINCFG[BUTTON].reg = PORT_PINCFG_PMUXEN | PORT_PINCFG_INEN | PORT_PINCFG_PULLEN;
}

void opener_set(int is_open)
{
    if (is_open)
        PORT->Group[0].OUTSET.reg = 1ul << OPENER;
    else
        PORT->Group[0].OUTCLR.reg = 1ul << OPENER;
}
