#ifndef PUMP_H
#define PUMP_H

#include <stdint.h>

extern volatile uint8_t pump_due;

void pump_run(void);

#endif
