#ifndef COUNTDOWN_H
#define COUNTDOWN_H

#include <stdint.h>

void countdown_init(void);
void countdown_add_minute(void);
uint8_t countdown_minutes(void);

/* Sleeps until a second is over or a key is pressed; while nothing is counted, until a key is pressed. */
void countdown_rest(void);

#endif
