#ifndef BOARD_H
#define BOARD_H

#include <msp430.h>

/* Port 6: the bridge's two ends; port 4: its supply through a switch. */
#define BRIDGE (BIT0 | BIT1)
#define BRIDGE_SUPPLY BIT2

/* Port 5: the cable's line driver, on USCI A1. */
#define CABLE_OUT BIT6
#define CABLE_IN BIT7

void board_init(void);

#endif
