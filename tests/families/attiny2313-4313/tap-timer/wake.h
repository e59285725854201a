#ifndef WAKE_H
#define WAKE_H

#include <stdint.h>

#define WOKEN_BY_KEY 1
#define WOKEN_BY_TIME 2
#define WOKEN_BY_SERVICE 4

#define KEY PD2
#define SERVICE_PRESENT PD3

void wake_init(void);

/* Whether a tick of eight seconds wakes the part, too. */
void wake_tick(uint8_t wanted);

/* Sleeps until something comes; bits of what came. */
uint8_t wake_wait(void);

#endif
