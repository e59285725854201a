#ifndef METER_H
#define METER_H
#include <stdint.h>

void pins_prepare(void);
void crystal_start(void);
void counter_start(void);
uint32_t counter_litres(void);
void hour_start(void);
int hour_is_over(void);
void radio_send(const char *text);
void rest_in(uint32_t mode);
#endif
