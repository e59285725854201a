#ifndef CALENDAR_H
#define CALENDAR_H

#include <stdbool.h>
#include <stdint.h>

void calendar_start(void);
bool calendar_has_changed(void);
uint8_t calendar_hour(void);
uint8_t calendar_minute(void);

#endif
