#ifndef DOOR_H
#define DOOR_H

#include <stdbool.h>

void door_init(void);

/* Returns when the contact moved or the time was over. */
void door_wait(void);
void door_happened(void);
bool door_is_open(void);

#endif
