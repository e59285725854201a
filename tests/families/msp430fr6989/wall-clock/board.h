#ifndef BOARD_H
#define BOARD_H

#include <msp430fr6989.h>

/* A crystal at PJ.4 and PJ.5; the display's common lines at P6.3 to P6.6, its segments at the pins of S4 to S15. */
#define CRYSTAL (BIT4 | BIT5)
#define COMMONS (BIT3 | BIT4 | BIT5 | BIT6)

void board_init(void);
void board_sleep(void);

#endif
