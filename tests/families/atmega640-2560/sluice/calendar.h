#ifndef CALENDAR_H
#define CALENDAR_H

#include <stdint.h>

void calendar_init(void);

/* Minutes since midnight. */
uint16_t calendar_minute(void);

#endif
