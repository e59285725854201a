#ifndef PINS_H
#define PINS_H

#include <avr/io.h>

/* PA0 measures the sensor, which PC0 feeds. */
#define SENSOR_bm PIN0_bm
#define SUPPLY_bm PIN0_bm

void pins_init(void);

#endif
