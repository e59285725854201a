#ifndef FLOAT_SWITCH_H
#define FLOAT_SWITCH_H

#include <stdint.h>

void float_switch_init(void);
uint8_t float_switch_is_low(void);

#endif
