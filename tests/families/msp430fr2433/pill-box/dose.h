#ifndef DOSE_H
#define DOSE_H

#include <stdbool.h>

void dose_init(void);

/* Returns when four seconds have gone by, or the lid has moved. */
void dose_wait(void);
bool dose_is_due(void);
void dose_taken(void);

#endif
