#ifndef BOARD_H
#define BOARD_H

#include <msp430.h>

/* P1.4 sees a reed contact against ground, closed while the door is; P3.6 drives a buzzer's transistor. No crystal. */
#define CONTACT BIT4
#define BUZZER BIT6

void board_init(void);
void buzzer_on(void);
void buzzer_off(void);

#endif
