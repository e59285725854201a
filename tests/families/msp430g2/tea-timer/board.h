#ifndef BOARD_H
#define BOARD_H

#include <msp430.h>

/* The key pulls P1.3 low; the disc hangs between P2.1 and ground. No crystal. */
#define KEY BIT3
#define DISC BIT1

void board_init(void);

#endif
