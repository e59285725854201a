#ifndef BOARD_H
#define BOARD_H

#include <msp430.h>

/* Port 1: the reed contact of the bucket closes to ground; the cable carries what P1.2 sends. */
#define CONTACT BIT3
#define CABLE BIT2

void board_init(void);

#endif
