#ifndef DAWN_H
#define DAWN_H

#include <stdint.h>

void dawn_init(void);
uint8_t dawn_is_here(void);

#endif
