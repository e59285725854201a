#ifndef BOARD_H
#define BOARD_H

#include <avr/io.h>

/* The lamp draws from a storage capacitor, the float pulls its pin to ground. */
#define LAMP_bm PIN5_bm
#define FLOAT_bm PIN2_bm

void board_init(void);
void board_lamp(uint8_t is_on);

#endif
