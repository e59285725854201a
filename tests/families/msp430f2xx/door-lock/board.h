#ifndef BOARD_H
#define BOARD_H

#include <msp430.h>
#include <stdint.h>

/* Port 1: four rows of keys, which a pressed key pulls down; port 3: four columns, low while nobody is there. */
#define ROWS (BIT0 | BIT1 | BIT2 | BIT3)
#define COLUMNS (BIT0 | BIT1 | BIT2 | BIT3)

/* Port 4: the motor, by the outputs of timer B. */
#define OUT_OPEN BIT1
#define OUT_CLOSE BIT2

void board_init(void);

#endif
