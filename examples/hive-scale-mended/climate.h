/* Brood-nest temperature and battery voltage, through the analog converter. */
#ifndef CLIMATE_H
#define CLIMATE_H

#include <stdint.h>

uint16_t climate_brood_nest(void);
uint16_t climate_battery(void);

#endif
