#ifndef THERMOMETER_H
#define THERMOMETER_H

#include <stdint.h>

/* Steps of the converter; more is warmer. */
uint16_t thermometer_read(void);

#endif
