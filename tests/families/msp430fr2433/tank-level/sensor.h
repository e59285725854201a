#ifndef SENSOR_H
#define SENSOR_H

#include <stdint.h>

void sensor_init(void);
uint16_t sensor_read(void);

#endif
