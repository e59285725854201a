#ifndef WAKEUP_H
#define WAKEUP_H

#include <stdint.h>

void wakeup_init(void);
void wakeup_wait(void);
uint8_t wakeup_overflow(void);

#endif
