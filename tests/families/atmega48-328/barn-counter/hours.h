#ifndef HOURS_H
#define HOURS_H

#include <stdint.h>

void hours_init(void);
uint8_t hours_now(void);

#endif
