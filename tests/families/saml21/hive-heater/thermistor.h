#ifndef THERMISTOR_H
#define THERMISTOR_H
#include <stdint.h>

void thermistor_init(void);
uint16_t thermistor_read(void);
#endif
