#ifndef BOARD_H
#define BOARD_H

#include <msp430fr6972.h>

/* P9.4 measures the sensor, which P1.0 feeds; the display's common lines are at P6.3 to P6.6, its segments at the pins of S16 to S23. */
#define SENSOR BIT4
#define SENSOR_SUPPLY BIT0
#define COMMONS (BIT3 | BIT4 | BIT5 | BIT6)

void board_init(void);
void board_start_minutes(void);
void board_sleep(void);

#endif
