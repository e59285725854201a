#ifndef BOARD_H
#define BOARD_H

#include <msp430.h>

/* Port 1: the pressure switch closes to ground. */
#define TUBE BIT4

/* Port 2: select of the data flash; port 3: its three wires, on USCI B0. */
#define FLASH_SELECT BIT7
#define FLASH_WIRES (BIT0 | BIT1 | BIT2)

/* Port 5: the watch crystal. */
#define CRYSTAL (BIT4 | BIT5)

void board_init(void);

#endif
