#ifndef BOARD_H
#define BOARD_H

void board_init(void);
void board_idle(void);
void board_stand_by(void);
#endif
