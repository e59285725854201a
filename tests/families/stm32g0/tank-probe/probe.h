#ifndef PROBE_H
#define PROBE_H
#include <stdint.h>

void power_prepare(void);
void power_rest(void);
void power_doze(void);
void pins_prepare(void);
void bus_start(void);
int bus_asks(void);
void bus_answer(uint16_t level);
uint16_t level_read(void);
#endif
