#ifndef BOARD_H
#define BOARD_H
#include "nrf.h"

enum { PIN_SCL = 26, PIN_SDA = 27, PIN_TXD = 6, PIN_SENSOR_POWER = 11 };

void pins_prepare(void);
void clock_prepare(uint32_t seconds);
int clock_take(void);
int sensor_read(uint8_t *bytes, uint32_t count);
void line_write(const uint8_t *bytes, uint32_t count);
#endif
