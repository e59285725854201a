#ifndef VALVE_H
#define VALVE_H
#include <stdint.h>

void board_init(void);
void valve_move(int is_open);
void clock_init(void);
void clock_wake_in(uint32_t seconds);
int clock_is_due(void);
void button_init(void);
int button_was_pressed(void);
#endif
