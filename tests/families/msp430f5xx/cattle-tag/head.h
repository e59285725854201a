#ifndef HEAD_H
#define HEAD_H

#include <stdint.h>

void head_init(void);

uint8_t head_take(void);

#endif
