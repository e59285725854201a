#ifndef CALENDAR_H
#define CALENDAR_H

#include <stdint.h>

void calendar_init(void);
void calendar_wait(void);
void calendar_keep_highest(uint16_t level);

#endif
