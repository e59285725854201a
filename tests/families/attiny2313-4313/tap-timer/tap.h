#ifndef TAP_H
#define TAP_H

#include <stdint.h>

void tap_init(void);
void tap_open(void);
void tap_tick(void);
uint8_t tap_openings(void);

#endif
