#ifndef PRESSURE_H
#define PRESSURE_H

#include <stdint.h>

void pressure_init(void);
uint16_t pressure_read(void);

#endif
