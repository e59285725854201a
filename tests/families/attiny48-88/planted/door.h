#ifndef DOOR_H
#define DOOR_H

#include <stdint.h>

extern volatile uint8_t door_is_pushed;

void door_init(void);
void door_check(void);

#endif
