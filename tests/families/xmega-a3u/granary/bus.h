#ifndef BUS_H
#define BUS_H

#include <stdint.h>

uint8_t bus_read_sensor(void);

#endif
