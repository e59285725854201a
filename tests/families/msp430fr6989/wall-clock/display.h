#ifndef DISPLAY_H
#define DISPLAY_H

#include <stdint.h>

void display_init(void);
void display_time(uint8_t hour, uint8_t minute);

#endif
