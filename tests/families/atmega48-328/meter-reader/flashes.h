#ifndef FLASHES_H
#define FLASHES_H

#include <stdint.h>

void flashes_init(void);
uint16_t flashes_take(void);

#endif
