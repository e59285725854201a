#ifndef BOARD_H
#define BOARD_H

#include <avr/io.h>

#define SENSOR_SUPPLY_bm PIN4_bm

void board_init(void);
void board_sleep_until_next(void);

#endif
