#ifndef BARRIER_H
#define BARRIER_H

#include <stdint.h>

void barrier_init(void);
uint8_t barrier_take(void);

#endif
