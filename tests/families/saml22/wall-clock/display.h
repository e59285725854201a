#ifndef DISPLAY_H
#define DISPLAY_H
#include <stdint.h>

void display_start(void);
void display_show(uint32_t seconds);
#endif
