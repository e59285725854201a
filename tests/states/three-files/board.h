#ifndef BOARD_H
#define BOARD_H
#include <stdint.h>

enum board_depth { BOARD_IDLE, BOARD_DEEP };

void board_pins(void);
void board_clock(uint8_t shift);
void board_rest(enum board_depth depth);
extern uint8_t board_rests;

#endif
