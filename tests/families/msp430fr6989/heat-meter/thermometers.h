#ifndef THERMOMETERS_H
#define THERMOMETERS_H

#include <stdint.h>

uint16_t thermometers_difference(void);

#endif
