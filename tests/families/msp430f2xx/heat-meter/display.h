#ifndef DISPLAY_H
#define DISPLAY_H

#include <stdint.h>

void display_init(void);

/* Starts to show a number; its interrupts go on with it. */
void display_show(uint32_t number);

#endif
