#ifndef PINS_H
#define PINS_H
#include <stdint.h>
void pins_park_all(void);
void pins_release(uint8_t bit);
#endif
