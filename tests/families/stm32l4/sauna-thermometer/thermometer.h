// A glass display, a thermistor, and a clock that wakes the two every five seconds.
#ifndef THERMOMETER_H
#define THERMOMETER_H
#include <stdint.h>

void board_pins(void);
void display_start(void);
void display_show(unsigned tenths);
unsigned thermistor_tenths(void);
void clock_start(unsigned seconds);
void watchdog_start(void);
void watchdog_feed(void);
#endif
