#ifndef BOARD_H
#define BOARD_H

#include <msp430.h>
#include <stdint.h>

/* Port 2: the two thermistors, and what feeds them while they are measured. */
#define RADIATOR BIT0
#define ROOM BIT1
#define FEED BIT2

/* Port 3: the display's driver, on USCI B0; it is selected by P3.6. */
#define DISPLAY_WIRES (BIT1 | BIT3)
#define DISPLAY_SELECT BIT6

void board_init(void);

#endif
