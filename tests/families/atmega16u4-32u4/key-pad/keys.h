#ifndef KEYS_H
#define KEYS_H

#include <stdint.h>

void keys_init(void);

/* Sleeps until a key changes; which ones are down. */
uint8_t keys_wait(void);

#endif
