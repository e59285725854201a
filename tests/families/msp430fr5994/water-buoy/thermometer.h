#ifndef THERMOMETER_H
#define THERMOMETER_H

#include <stdint.h>

uint16_t thermometer_read(void);

#endif
