#ifndef BOARD_H
#define BOARD_H

#include <msp430.h>

/* Port 1: a tilt switch to ground, through a pull-up that the board carries. */
#define TILT BIT0

/* Port 3: the part's activity, for the bench only. */
#define BENCH BIT6

/* Port 5: the watch crystal. */
#define CRYSTAL (BIT0 | BIT1)

void board_init(void);

#endif
