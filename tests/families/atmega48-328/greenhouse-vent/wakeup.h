#ifndef WAKEUP_H
#define WAKEUP_H

#include <stdint.h>

/* Bits of what woke the part. */
#define WOKEN_BY_TIME 1
#define WOKEN_BY_BUTTON 2

void wakeup_init(void);

/* Sleeps until something happens, and says what. */
uint8_t wakeup_wait(void);

#endif
