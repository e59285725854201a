#ifndef TICK_H
#define TICK_H
#include <stdint.h>

typedef void (*tick_callback_t)(void);

void tick_subscribe(tick_callback_t callback);
void tick_start(uint8_t top);
void tick_wait(void);

#endif
