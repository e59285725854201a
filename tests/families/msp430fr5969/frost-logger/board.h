#ifndef BOARD_H
#define BOARD_H

#include <msp430.h>

/* P1.3 is the probe's divider, P4.5 feeds it; P2.0 sends to the cable, P2.1 receives; a crystal at PJ.4 and PJ.5. */
#define DIVIDER BIT3
#define DIVIDER_SUPPLY BIT5
#define CABLE_OUT BIT0
#define CABLE_IN BIT1
#define CRYSTAL (BIT4 | BIT5)

void board_init(void);

#endif
