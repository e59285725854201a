#ifndef KEYPAD_H
#define KEYPAD_H

#include <stdint.h>

void keypad_init(void);

/* Sleeps until a key is pressed. */
uint8_t keypad_wait(void);

#endif
