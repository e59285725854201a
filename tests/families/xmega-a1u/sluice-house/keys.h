#ifndef KEYS_H
#define KEYS_H

#include <stdint.h>

#define KEY_CAME 1
#define TICK_CAME 2

void keys_init(void);

/* Sleeps until a key is pressed or a second is over. */
uint8_t keys_wait(void);

uint8_t keys_last(void);

#endif
