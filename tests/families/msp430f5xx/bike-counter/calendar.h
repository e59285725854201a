#ifndef CALENDAR_H
#define CALENDAR_H

#include <stdint.h>

void calendar_init(void);

/* Returns at the next full hour. */
void calendar_sleep_until_hour(void);

uint16_t calendar_hour(void);

#endif
