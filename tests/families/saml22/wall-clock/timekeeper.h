#ifndef TIMEKEEPER_H
#define TIMEKEEPER_H
#include <stdint.h>

void timekeeper_start(void);
int timekeeper_has_ticked(void);
int timekeeper_take(void);
uint32_t timekeeper_seconds(void);
#endif
