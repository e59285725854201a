#ifndef BOARD_H
#define BOARD_H

#include <stdint.h>

#define LAMP 1
#define FLOAT_SWITCH 4

void board_init(void);
void lamp(uint8_t lit);

#endif
