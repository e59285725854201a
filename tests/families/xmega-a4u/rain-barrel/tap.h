#ifndef TAP_H
#define TAP_H

#include <stdint.h>

void tap_init(void);
void tap(uint8_t open);

#endif
