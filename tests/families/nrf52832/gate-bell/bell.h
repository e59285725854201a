#ifndef BELL_H
#define BELL_H
#include "nrf.h"

enum { BUTTON = 13, HORN = 20, LAMP = 17 };

void button_prepare(void);
uint32_t button_presses(void);
void bell_prepare(void);
void bell_ring(void);
void bell_quiet(void);
void ticker_prepare(void);
void ticker_start(uint32_t ticks);
int ticker_is_over(void);
#endif
