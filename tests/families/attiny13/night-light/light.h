#ifndef LIGHT_H
#define LIGHT_H

#include <stdint.h>

void light_init(void);
uint16_t light_read(void);

#endif
