#ifndef SENSOR_H
#define SENSOR_H

#include <stdint.h>

uint16_t sensor_read(void);

#endif
